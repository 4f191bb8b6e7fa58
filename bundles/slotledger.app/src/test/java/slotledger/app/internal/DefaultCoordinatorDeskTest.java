package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalInt;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import slotledger.app.DeskException;
import slotledger.app.RoundWish;
import slotledger.export.PlanFiles;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.RoundSheet;

/** Which plan is carried out, and what rounds are made of it. */
class DefaultCoordinatorDeskTest {

    private static final Path SCHOOL = Path.of("school");
    private static final Author ANNA = new Author("anna", "");

    private final SmallWorld world = new SmallWorld();
    private final Plan plan = SmallWorld.plan(
            List.of(world.plan("K-1", "8 -", "8 8"), world.plan("K-2", "8 -", "8 8")));
    private final WorkSessions sessions = new WorkSessions(new MemoryStores(2), planFiles());
    private final DefaultWorkDesk work = new DefaultWorkDesk(sessions);
    private final DefaultCoordinatorDesk desk = new DefaultCoordinatorDesk(sessions, work, null, null, null, null);

    @AfterEach
    void closeProjects() {
        sessions.close();
    }

    @Test
    void thePlanThatWasApprovedIsCarriedOutUntilItsOrderHasEnded() throws Exception {
        assertEquals(2, desk.order(SCHOOL, OptionalInt.empty()).number());
        desk.record(SCHOOL, new TradeEvent.Approved(1, "Head"), ANNA);
        assertEquals(1, desk.order(SCHOOL, OptionalInt.empty()).number());
        assertEquals(1, work.jobs(SCHOOL).get(0).plan());
        desk.record(SCHOOL, new TradeEvent.Ended(1), ANNA);
        assertEquals(2, desk.order(SCHOOL, OptionalInt.empty()).number());
        assertEquals(2, desk.order(SCHOOL, OptionalInt.of(2)).number());
    }

    @Test
    void roundsLeaveOutWhatHasEndedAndAreRefusedWhereAllHas() throws Exception {
        end("K-1");
        List<RoundSheet> rounds = desk.makeRounds(SCHOOL, wish(), ANNA);
        assertEquals(List.of(new AssetTag("K-2")), rounds.get(0).round().machines());
        assertEquals(rounds, desk.roundSheets(SCHOOL));
        assertEquals(List.of(rounds.get(0).round()), work.rounds(SCHOOL));
        end("K-2");
        assertTrue(assertThrows(DeskException.class, () -> desk.makeRounds(SCHOOL, wish(), ANNA)).getMessage()
                .contains("have ended"));
    }

    @Test
    void aPlanThatIsNotThereIsNamed() {
        assertTrue(assertThrows(DeskException.class, () -> desk.order(SCHOOL, OptionalInt.of(7))).getMessage()
                .contains("no plan 7"));
    }

    private void end(String tag) throws DeskException {
        work.record(SCHOOL, List.of(new JobEvent(UUID.randomUUID(), new AssetTag(tag), 2, Instant.EPOCH,
                new What.Became(JobState.DONE, ""))), ANNA);
    }

    private static RoundWish wish() {
        return new RoundWish(OptionalInt.empty(), List.of("Ben"), List.of(), 20, Duration.ofMinutes(15),
                Duration.ofMinutes(30));
    }

    private PlanFiles planFiles() {
        return (PlanFiles) Proxy.newProxyInstance(getClass().getClassLoader(), new Class<?>[] {PlanFiles.class},
                (proxy, method, arguments) -> plan);
    }
}
