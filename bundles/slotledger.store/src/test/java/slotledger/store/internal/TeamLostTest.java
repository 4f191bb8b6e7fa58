package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.TeamRole;
import slotledger.model.project.Watch;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;
import slotledger.store.TeamPlace;
import slotledger.testkit.PostgresServer;

/** The database goes away in the middle of work: nothing is lost, and nothing is written twice. */
class TeamLostTest {

    private static final int RESTARTS = Boolean.getBoolean("long.tests") ? 50 : 3;
    private static final int COMMITS_LOST = 10;

    @TempDir
    Path top;

    private Team team;
    private DefaultProjectStores stores;
    private Path folder;

    @BeforeEach
    void makeAProject() throws Exception {
        team = new Team();
        stores = team.stores(Clock.systemUTC());
        folder = top.resolve("school");
        stores.shared().create(team.place(TeamRole.COORDINATOR), folder, "School", Fixture.files(top), Fixture.ANNA);
    }

    @AfterEach
    void close() {
        if (team != null) {
            team.close();
        }
    }

    @Test
    void everyEntryIsThereOnceThoughTheServerIsKilledInTheMiddleOfTheWork(TestReporter reporter) throws Exception {
        ExecutorService person = Executors.newSingleThreadExecutor();
        int[] written = new int[1];
        boolean[] enough = new boolean[1];
        Future<?> work = person.submit(() -> {
            try (ProjectStore store = stores.open(folder)) {
                for (long next = 3; !enough[0]; next++) {
                    Author author = new Author("anna", "entry " + next);
                    assertEquals(next, next % 2 == 0 ? store.append(Fixture.correction("K-" + next, "lab"), author)
                            .number() : importFleet(store, next, author));
                    written[0]++;
                }
            }
            return null;
        });
        for (int restart = 0; restart < RESTARTS; restart++) {
            TimeUnit.MILLISECONDS.sleep(700);
            team.server().stopAtOnce();
            TimeUnit.MILLISECONDS.sleep(300);
            team.server().start();
        }
        TimeUnit.MILLISECONDS.sleep(500);
        enough[0] = true;
        work.get(60, TimeUnit.SECONDS);
        person.shutdown();
        try (ProjectSource source = stores.read(folder)) {
            List<Entry> entries = source.journal().entries();
            assertEquals(2 + written[0], entries.size());
            entries.stream().skip(2).forEach(entry -> assertEquals("entry " + entry.number(), entry.author().why()));
            for (Original original : source.journal().state().files()) {
                source.write(original, top.resolve("out").resolve(original.name()));
            }
        }
        reporter.publishEntry("restarts", RESTARTS + " times killed, " + written[0] + " entries written, none lost");
    }

    private long importFleet(ProjectStore store, long number, Author author) throws Exception {
        Path file = Files.writeString(top.resolve("fleet-" + number + ".csv"), ("line " + number + "\n").repeat(9000));
        Original fleet = store.keep("fleet.csv", file);
        return store.append(new Change.Imported(Map.of(Part.FLEET, List.of(fleet))), author).number();
    }

    @Test
    void whatWasCommittedIsNotWrittenAgainWhenOnlyTheAnswerWasLost() throws Exception {
        String url = team.place(TeamRole.COORDINATOR).url();
        int port = Integer.parseInt(url.replaceFirst(".*:(\\d+)/.*", "$1"));
        try (CuttingProxy proxy = new CuttingProxy(port)) {
            // Each commit goes over as a word, by which the proxy knows it, and not as the number of a statement.
            TeamPlace around = new TeamPlace(url.replace(":" + port + "/", ":" + proxy.port() + "/")
                    + "?prepareThreshold=0&preparedStatementCacheQueries=0", Optional.of("anna"));
            stores.shared().join(around, top.resolve("around"), Optional.empty());
            try (ProjectStore store = stores.open(top.resolve("around"))) {
                for (int i = 0; i < COMMITS_LOST; i++) {
                    proxy.loseAnswers(1);
                    store.append(Fixture.correction("K-" + i, "lab"), Fixture.ANNA);
                }
            }
            assertEquals(COMMITS_LOST, proxy.lost());
        }
        try (ProjectSource source = stores.read(folder)) {
            assertEquals(2 + COMMITS_LOST, source.journal().last().number());
            assertEquals(COMMITS_LOST, source.journal().state().decisions().size());
        }
    }

    @Test
    void aServerThatStaysDownIsSaidInWords() throws Exception {
        try (TeamDatabases impatient = new TeamDatabases(Map.of("PGPASSWORD", PostgresServer.PASSWORD)::get,
                Duration.ofSeconds(2))) {
            DefaultProjectStores hurried =
                    new DefaultProjectStores(Clock.systemUTC(), Schema.today(), Duration.ofSeconds(1), impatient);
            try (ProjectStore store = hurried.open(folder)) {
                team.server().stopAtOnce();
                StoreException said = assertThrows(StoreException.class,
                        () -> store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA));
                assertEquals(Trouble.AWAY, said.trouble());
                assertTrue(said.getMessage().contains("doesn't answer, and still did not after 2 seconds"),
                        said.getMessage());
                assertTrue(said.getMessage().contains("look at the history"), said.getMessage());
                assertTrue(!said.getMessage().contains(PostgresServer.PASSWORD));
            } finally {
                team.server().start();
            }
            try (ProjectStore store = hurried.open(folder)) {
                assertEquals(3, store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA).number());
            }
        }
    }

    @Test
    void whoWatchesIsToldThatTheDatabaseIsAwayAndOfEverythingWhenItIsBack() throws Exception {
        BlockingQueue<String> told = new LinkedBlockingQueue<>();
        Watch watch = stores.watch(folder, new ProjectListener() {
            @Override
            public void changed(long last) {
                told.add("entry " + last);
            }

            @Override
            public void away(String why) {
                told.add("away");
            }

            @Override
            public void back() {
                told.add("back");
            }
        });
        try {
            TimeUnit.MILLISECONDS.sleep(500);
            team.server().stopAtOnce();
            assertEquals("away", told.poll(5, TimeUnit.SECONDS));
            team.server().start();
            assertEquals("back", told.poll(10, TimeUnit.SECONDS));
            try (ProjectStore store = stores.open(folder)) {
                store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA);
            }
            assertEquals("entry 3", told.poll(2, TimeUnit.SECONDS));
        } finally {
            watch.close();
        }
    }
}
