package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import slotledger.app.DeskException;
import slotledger.export.PlanFiles;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;

/** What technicians say is written down once, whoever else writes at the same time. */
class DefaultWorkDeskTest {

    private static final Path SCHOOL = Path.of("school");
    private static final Author BEN = new Author("ben", "");
    private static final AssetTag ONE = new AssetTag("K-1");
    private static final AssetTag TWO = new AssetTag("K-2");

    private final SmallWorld world = new SmallWorld();
    private final Plan plan = SmallWorld.plan(List.of(world.plan("K-1", "8 -", "8 8"), world.plan("K-2", "8 -", "8 8"),
            world.plan("K-3", "8 8", "8 8")));
    private final MemoryStores stores = new MemoryStores(2);
    private final WorkSessions sessions = new WorkSessions(stores, planFiles());
    private final DefaultWorkDesk desk = new DefaultWorkDesk(sessions);

    @AfterEach
    void closeProjects() {
        sessions.close();
        assertEquals(0, stores.open);
    }

    @Test
    void everyMachineThatIsOpenedHasAJobOfTheLastPlan() throws Exception {
        assertEquals(List.of(Job.planned(ONE, 2), Job.planned(TWO, 2)), desk.jobs(SCHOOL));
    }

    @Test
    void whatIsRecordedHoldsInOneEntry() throws Exception {
        List<Job> told = desk.record(SCHOOL, List.of(event(1, ONE, new What.Ticked(1, true)),
                event(2, ONE, new What.Became(JobState.DONE, "")), event(3, TWO, new What.Ticked(2, true))), BEN);
        assertEquals(List.of(desk.job(SCHOOL, ONE), desk.job(SCHOOL, TWO)), told);
        assertEquals(JobState.DONE, desk.job(SCHOOL, ONE).state());
        assertEquals(4, stores.journal().last().number());
        assertEquals(BEN, stores.journal().last().author());
    }

    @Test
    void whatIsSentAgainIsNotWrittenAgain() throws Exception {
        List<JobEvent> events = List.of(event(1, ONE, new What.Deviated("S1", "dust")));
        desk.record(SCHOOL, events, BEN);
        assertEquals(1, desk.record(SCHOOL, events, BEN).get(0).deviations().size());
        assertEquals(4, stores.journal().last().number());
        desk.record(SCHOOL, List.of(events.get(0), event(2, ONE, new What.Deviated("S2", "dust"))), BEN);
        assertEquals(2, desk.job(SCHOOL, ONE).deviations().size());
    }

    @Test
    void whoeverWroteFirstOursFollows() throws Exception {
        stores.othersWillWrite(new Change.Worked(List.of(event(8, TWO, new What.Ticked(1, true)))));
        stores.othersWillWrite(new Change.Worked(List.of(event(9, TWO, new What.Ticked(2, true)))));
        desk.record(SCHOOL, List.of(event(1, ONE, new What.Ticked(1, true))), BEN);
        assertEquals(6, stores.journal().last().number());
        assertEquals(Set.of(1, 2), desk.job(SCHOOL, TWO).ticked());
    }

    @Test
    void anEventThatSomebodyElseRecordedMeanwhileIsNotWrittenTwice() throws Exception {
        JobEvent event = event(1, ONE, new What.Deviated("S1", "dust"));
        stores.othersWillWrite(new Change.Worked(List.of(event)));
        assertEquals(1, desk.record(SCHOOL, List.of(event), BEN).get(0).deviations().size());
        assertEquals(4, stores.journal().last().number());
    }

    @Test
    void tenDevicesAtOnceLoseNothing() throws Exception {
        ExecutorService devices = Executors.newFixedThreadPool(10);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int device = 0; device < 10; device++) {
                int first = device * 20;
                all.add(devices.submit(() -> {
                    for (int i = 1; i <= 20; i++) {
                        desk.record(SCHOOL, List.of(event(first + i, ONE, new What.Ticked(first + i, true))), BEN);
                    }
                    return null;
                }));
            }
            for (Future<?> each : all) {
                each.get();
            }
        } finally {
            devices.shutdown();
        }
        assertEquals(200, desk.job(SCHOOL, ONE).ticked().size());
        assertEquals(1, stores.openings);
    }

    @Test
    void aMachineWithoutAJobIsRefusedInWordsAndNothingIsWritten() {
        String left = refused(event(1, new AssetTag("K-3"), new What.Ticked(1, true)));
        assertTrue(left.contains("leaves machine K-3 as it is"), left);
        String unknown = refused(event(1, new AssetTag("X-9"), new What.Ticked(1, true)));
        assertTrue(unknown.contains("knows no machine X-9"), unknown);
        String noPlan = refused(new JobEvent(new UUID(0, 1), ONE, 7, Instant.EPOCH, new What.Ticked(1, true)));
        assertTrue(noPlan.contains("no plan 7"), noPlan);
        assertEquals(3, stores.journal().last().number());
    }

    @Test
    void roundsOfAnotherPlanThanTheOneCarriedOutAreNotShown() throws Exception {
        assertEquals(List.of(), desk.rounds(SCHOOL));
        Round round = new Round("r1", 1, "Ben", "", "", Optional.empty(), List.of(ONE));
        stores.write(new Change.Rounds(1, List.of(round)), BEN);
        assertEquals(List.of(round), desk.rounds(SCHOOL));
        assertEquals(1, desk.jobs(SCHOOL).get(0).plan());
        stores.write(new Change.TakenBack(2), BEN);
        assertEquals(List.of(), desk.rounds(SCHOOL));
    }

    @Test
    void aProjectIsLetGoOfWhenNothingHappensInIt() throws Exception {
        desk.jobs(SCHOOL);
        for (int i = 0; i < 100 && stores.open > 0; i++) {
            Thread.sleep(50);
        }
        assertEquals(0, stores.open);
        desk.record(SCHOOL, List.of(event(1, ONE, new What.Ticked(1, true))), BEN);
        assertEquals(2, stores.openings);
    }

    private String refused(JobEvent event) {
        return assertThrows(DeskException.class, () -> desk.record(SCHOOL,
                List.of(event(77, ONE, new What.Ticked(1, true)), event), BEN)).getMessage();
    }

    private static JobEvent event(long id, AssetTag machine, What what) {
        return new JobEvent(new UUID(0, id), machine, 2, Instant.parse("2026-12-01T09:00:00Z"), what);
    }

    private PlanFiles planFiles() {
        return (PlanFiles) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {PlanFiles.class},
                (proxy, method, arguments) -> plan);
    }
}
