package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import slotledger.app.FleetDesk;
import slotledger.app.RoundWish;
import slotledger.app.Survey;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.task.Progress;
import slotledger.model.work.Round;
import slotledger.serve.Pass;
import slotledger.serve.PhoneServer;
import slotledger.serve.PhoneService;
import slotledger.serve.ServeRequest;

/** A phone sees a round of a real project and ticks a step, with the server inside the framework. */
class PhonesTest {

    private static final Author BEN = new Author("ben", "");

    @TempDir
    Path top;

    private final FleetDesk desk = Demo.desk();
    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void aStepTickedOnAPhoneIsInTheHistoryOfTheProject() throws Exception {
        Path project = projectWithRounds();
        Round round = desk.work().rounds(project).get(0);
        AssetTag machine = round.machines().get(0);
        try (PhoneServer server = phones().start(new ServeRequest(project, Optional.empty(), 0, Optional.empty(),
                Duration.ofDays(1), Set.of()))) {
            Pass.Entry pass = server.passes().get(0).entry().orElseThrow();
            HttpResponse<String> entered = post(server.address(), "/api/enter", "enter", "",
                    "{\"round\":\"" + round.id() + "\",\"secret\":\"" + pass.secret() + "\"}");
            assertEquals(200, entered.statusCode(), entered.body());
            String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
            Matcher page = Pattern.compile("\"page\":\"([^\"]+)\"").matcher(entered.body());
            assertTrue(page.find(), entered.body());

            String shown = client.send(HttpRequest.newBuilder(server.address().resolve("/api/round"))
                    .header("Cookie", cookie).build(), HttpResponse.BodyHandlers.ofString()).body();
            assertTrue(shown.contains("<svg") && shown.contains(machine.value()), shown);

            String event = "{\"events\":[{\"id\":\"" + UUID.randomUUID() + "\",\"machine\":\"" + machine.value()
                    + "\",\"plan\":1,\"at\":\"" + Instant.now() + "\",\"kind\":\"ticked\",\"step\":1,\"done\":true}]}";
            for (int i = 0; i < 2; i++) {
                HttpResponse<String> told = post(server.address(), "/api/events", page.group(1), cookie, event);
                assertEquals(200, told.statusCode(), told.body());
            }
        }
        assertEquals(Set.of(1), desk.work().job(project, machine).ticked());
        assertEquals(round.technician(), desk.projects().history(project).last().author().who());
    }

    private Path projectWithRounds() throws Exception {
        Path project = top.resolve("school");
        desk.projects().create(project, Optional.of(Demo.evening(top.resolve("evening"))), BEN);
        Survey survey = desk.survey(Demo.open(project), Progress.NONE);
        desk.export(survey, desk.plan(survey, Progress.NONE), top.resolve("plan"), false, Progress.NONE);
        desk.projects().keepPlan(survey, top.resolve("plan/plan.json"), BEN);
        desk.coordinator().makeRounds(project, new RoundWish(OptionalInt.empty(), List.of("Ada Miles"), List.of(), 20,
                Duration.ofMinutes(15), Duration.ofMinutes(30)), BEN);
        return project;
    }

    private HttpResponse<String> post(URI address, String path, String page, String cookie, String body)
            throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(address.resolve(path))
                .header("Content-Type", "application/json").header("X-Slotledger-Page", page)
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    private static PhoneService phones() {
        BundleContext context = FrameworkUtil.getBundle(PhonesTest.class).getBundleContext();
        return context.getService(context.getServiceReference(PhoneService.class));
    }
}
