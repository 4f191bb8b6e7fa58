package slotledger.bench;

import java.lang.reflect.Proxy;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import slotledger.app.CardDesk;
import slotledger.app.Survey;
import slotledger.app.WorkDesk;
import slotledger.app.internal.DefaultFleetDesk;
import slotledger.bench.fleet.FleetCase;
import slotledger.bench.fleet.Fleets;
import slotledger.catalog.BoardDrafter;
import slotledger.catalog.CatalogReader;
import slotledger.catalog.FleetResolver;
import slotledger.export.PlanBook;
import slotledger.export.internal.DefaultPlanFiles;
import slotledger.export.internal.card.DefaultJobCards;
import slotledger.intake.Intake;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Original;
import slotledger.model.task.Progress;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.Round;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.DeliveryPlanner;
import slotledger.planner.FleetPlanner;
import slotledger.planner.PlanAdvisor;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.Planning;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;
import slotledger.serve.Pass;
import slotledger.serve.PhoneServer;
import slotledger.serve.ServeRequest;
import slotledger.serve.internal.DefaultPhoneService;
import slotledger.serve.internal.http.Limits;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.internal.DefaultProjectStores;

/**
 * Ten phones that tick at once, over the network and a real project, beside the bare cost of writing the same down. A
 * phone sends one tick, waits for the answer and sends the next, as fast as it can: far harder than people.
 */
public final class PhoneBenchmarks {

    private static final int PHONES = 10;
    private static final int TICKS = 60;
    private static final int WARM = 10;
    private static final int MACHINES = 120;
    private static final Author COORDINATOR = new Author("coordinator", "");
    private static final Limits WIDE = new Limits(1_000, 1_000, Duration.ofMinutes(1), 1_000_000, 100, 400, 256 * 1024,
            200, Duration.ofSeconds(30), Duration.ofSeconds(30));

    private final WorkDesk work;
    private final Path project;
    private final List<Round> rounds = new ArrayList<>();
    private final List<JobCard> cards;

    private PhoneBenchmarks(Path folder) throws Exception {
        project = folder.resolve("project");
        PlanRequest request = Fleets.request(FleetCase.values()[0], MACHINES, 1);
        Plan plan = new Planning(StandardRules.create(), new ScipSolver()).plan(request, Progress.NONE);
        cards = new DefaultJobCards().of(new PlanBook(plan, request.fleet().boards(), request.market(), List.of(),
                List.of()), 1);
        DefaultProjectStores stores = new DefaultProjectStores();
        stores.create(project, "benchmark", Map.of(), COORDINATOR);
        Path planFile = folder.resolve("plan.json");
        new DefaultPlanFiles().writePlan(plan, planFile);
        List<AssetTag> tags = plan.work().stream().map(each -> each.machine().tag()).toList();
        int share = tags.size() / PHONES;
        for (int i = 0; i < PHONES; i++) {
            rounds.add(new Round("R" + (i + 1), 1, "Technician " + (i + 1), "", "", Optional.empty(),
                    tags.subList(i * share, (i + 1) * share)));
        }
        try (ProjectStore store = stores.open(project)) {
            Original kept = store.keep("plan.json", planFile);
            long entry = store.journal().last().number();
            store.append(new Change.Planned(kept, "benchmark", LocalDate.now(), entry), COORDINATOR);
            store.append(new Change.Rounds(1, rounds), COORDINATOR);
        }
        work = new DefaultFleetDesk(nobody(Intake.class), nobody(CatalogReader.class), nobody(FleetResolver.class),
                nobody(BoardDrafter.class),
                nobody(MemoryRules.class), nobody(FleetPlanner.class), nobody(PlanAdvisor.class),
                nobody(DeliveryPlanner.class), new DefaultPlanFiles(), stores, List.of()).work();
    }

    /** Measures. */
    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("slotledger-phones");
        PhoneBenchmarks bench = new PhoneBenchmarks(folder);
        System.out.printf(Locale.ROOT, "%-34s %9s %9s %9s %9s%n", "", "events/s", "median ms", "95 % ms", "worst ms");
        bench.bare("written down, one after the other", 1);
        bench.bare("written down by ten at once", PHONES);
        bench.phones("ten phones at once");
        bench.bare("written down by ten at once, again", PHONES);
        bench.checkEntries((3 * PHONES + 1) * (WARM + TICKS));
        System.exit(0);
    }

    /** Every tick is an entry of its own, behind those that made project, plan and rounds. */
    private void checkEntries(long ticks) throws Exception {
        try (ProjectSource source = new DefaultProjectStores().read(project)) {
            long entries = source.journal().last().number();
            if (entries != 3 + ticks) {
                throw new IllegalStateException(entries + " entries, but " + ticks + " ticks");
            }
            System.out.println(ticks + " ticks, each once in the project");
        }
    }

    private void bare(String name, int writers) throws Exception {
        measure(name, writers, writer -> {
            Round round = rounds.get(writer);
            Author author = new Author(round.technician(), "");
            return tick -> work.record(project, List.of(new JobEvent(UUID.randomUUID(), machine(round, tick), 1,
                    Instant.now(), new What.Ticked(1, tick % 2 == 0))), author);
        });
    }

    private void phones(String name) throws Exception {
        CardDesk desk = new CardDesk() {
            @Override
            public List<JobCard> cards(Survey survey, Plan plan, int number) {
                return cards;
            }

            @Override
            public List<JobCard> cards(Path folder, int plan, Progress progress) {
                return cards;
            }
        };
        try (PhoneServer server = new DefaultPhoneService(work, desk, WIDE, Clock.systemUTC()).start(new ServeRequest(
                project, Optional.empty(), 0, Optional.empty(), Duration.ofDays(1), Set.of()))) {
            measure(name, PHONES, writer -> phone(server, server.passes().get(writer)));
        }
    }

    private Work phone(PhoneServer server, Pass pass) throws Exception {
        HttpClient client = HttpClient.newHttpClient();
        HttpResponse<String> entered = client.send(post(server.address(), "/api/enter", "enter", "x=y",
                "{\"round\":\"%s\",\"secret\":\"%s\"}".formatted(pass.round(), pass.entry().orElseThrow().secret())),
                HttpResponse.BodyHandlers.ofString());
        String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
        String page = entered.body().replaceAll(".*\"page\":\"([^\"]+)\".*", "$1");
        Round round = rounds.stream().filter(each -> each.id().equals(pass.round())).findFirst().orElseThrow();
        return tick -> {
            String body = ("{\"events\":[{\"id\":\"%s\",\"machine\":\"%s\",\"plan\":1,\"at\":\"%s\","
                    + "\"kind\":\"ticked\",\"step\":1,\"done\":%s}]}").formatted(UUID.randomUUID(),
                            machine(round, tick), Instant.now(), tick % 2 == 0);
            HttpResponse<String> answer = client.send(post(server.address(), "/api/events", page, cookie, body),
                    HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200 || !answer.body().contains("\"refused\":[]")) {
                throw new IllegalStateException(answer.statusCode() + " " + answer.body());
            }
        };
    }

    private static HttpRequest post(URI address, String path, String page, String cookie, String body) {
        return HttpRequest.newBuilder(address.resolve(path)).header("Content-Type", "application/json")
                .header("X-Slotledger-Page", page).header("Cookie", cookie)
                .POST(HttpRequest.BodyPublishers.ofString(body)).build();
    }

    private static AssetTag machine(Round round, int tick) {
        return round.machines().get(tick / 2 % round.machines().size());
    }

    /** One tick of one writer. */
    private interface Work {
        void once(int tick) throws Exception;
    }

    /** Makes what a writer does. */
    private interface Writers {
        Work of(int writer) throws Exception;
    }

    private static void measure(String name, int writers, Writers made) throws Exception {
        List<Work> each = new ArrayList<>();
        for (int i = 0; i < writers; i++) {
            each.add(made.of(i));
        }
        run(each, WARM);
        long begun = System.nanoTime();
        long[] times = run(each, TICKS);
        double seconds = (System.nanoTime() - begun) / 1e9;
        Arrays.sort(times);
        System.out.printf(Locale.ROOT, "%-34s %9.0f %9.1f %9.1f %9.1f%n", name, times.length / seconds,
                times[times.length / 2] / 1e6, times[times.length * 95 / 100] / 1e6, times[times.length - 1] / 1e6);
    }

    private static long[] run(List<Work> writers, int ticks) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(writers.size());
        try {
            List<Callable<long[]>> all = new ArrayList<>();
            for (Work writer : writers) {
                all.add(() -> {
                    long[] times = new long[ticks];
                    for (int i = 0; i < ticks; i++) {
                        long begun = System.nanoTime();
                        writer.once(i);
                        times[i] = System.nanoTime() - begun;
                    }
                    return times;
                });
            }
            List<long[]> done = new ArrayList<>();
            for (Future<long[]> each : threads.invokeAll(all)) {
                done.add(each.get());
            }
            return done.stream().flatMapToLong(Arrays::stream).toArray();
        } finally {
            threads.shutdown();
        }
    }

    /** Recording work asks none of these. */
    private static <T> T nobody(Class<T> service) {
        return service.cast(Proxy.newProxyInstance(service.getClassLoader(), new Class<?>[] {service},
                (proxy, method, arguments) -> {
                    throw new UnsupportedOperationException(method + " must not be asked here");
                }));
    }
}
