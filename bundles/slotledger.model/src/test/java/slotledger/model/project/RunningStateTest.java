package slotledger.model.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;

/** What is kept up to date entry by entry is what the whole journal says. */
class RunningStateTest {

    private static final AssetTag TAG = new AssetTag("K-1");
    private static final Instant NOON = Instant.parse("2026-11-28T12:00:00Z");
    private static final Original FILE = new Original("plan.json", "a".repeat(64), 10);

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void everyStepIsWhatTheWholeJournalSays() {
        write(new Change.Created("school"));
        RunningState running = RunningState.of(new Journal(entries));
        List<Change> changes = List.of(plan(), rounds(1), worked(1, new What.Ticked(1, true)),
                worked(2, new What.Became(JobState.DONE, "")), new Change.TakenBack(4), new Change.Restored(4),
                plan(), rounds(2), new Change.TakenBack(8), worked(3, new What.Deviated("S1", "holds another")));
        for (Change change : changes) {
            write(change);
            running.follow(new Journal(entries));
            assertEquals(new Journal(entries).state(), running.state(), change.toString());
        }
        assertEquals(JobState.DONE, running.job(1, TAG).state());
        assertEquals(Set.of(1), running.job(1, TAG).ticked());
        assertEquals(1, running.job(1, TAG).deviations().size());
        assertEquals(1, running.state().carriedOut().orElseThrow().number());
    }

    @Test
    void severalEntriesAtOnceAreTakenInLikeOneByOne() {
        write(new Change.Created("school"));
        RunningState running = RunningState.of(new Journal(entries));
        write(plan());
        write(worked(1, new What.Ticked(1, true)));
        write(worked(2, new What.Ticked(2, true)));
        running.follow(new Journal(entries));
        assertEquals(Set.of(1, 2), running.job(1, TAG).ticked());
    }

    @Test
    void anEventThatIsThereTwiceCountsOnce() {
        write(new Change.Created("school"));
        write(worked(1, new What.Deviated("", "no lock on the case")));
        write(worked(1, new What.Deviated("", "no lock on the case")));
        assertEquals(1, new Journal(entries).state().work().job(1, TAG).deviations().size());
    }

    @Test
    void anEventThatWasTakenBackStaysKnownSoThatSendingItAgainRestoresNothing() {
        write(new Change.Created("school"));
        write(worked(1, new What.Became(JobState.DONE, "")));
        write(new Change.TakenBack(2));
        RunningState running = RunningState.of(new Journal(entries));
        assertEquals(JobState.PLANNED, running.job(1, TAG).state());
        assertTrue(running.knows(new UUID(0, 1)));
        assertFalse(running.knows(new UUID(0, 2)));
    }

    @Test
    void withoutRoundsTheLastPlanIsCarriedOutAndARoundsPlanThatWasTakenBackIsNot() {
        write(new Change.Created("school"));
        assertEquals(Optional.empty(), new Journal(entries).state().carriedOut());
        write(plan());
        write(rounds(1));
        write(plan());
        assertEquals(1, new Journal(entries).state().carriedOut().orElseThrow().number());
        write(new Change.TakenBack(2));
        assertEquals(2, new Journal(entries).state().carriedOut().orElseThrow().number());
    }

    private static Change plan() {
        return new Change.Planned(FILE, "school", LocalDate.of(2026, 11, 24), 1);
    }

    private static Change rounds(int plan) {
        return new Change.Rounds(plan,
                List.of(new Round("r1", plan, "Ben", "Main", "101", Optional.empty(), List.of(TAG))));
    }

    private static Change worked(int id, What what) {
        return new Change.Worked(List.of(new JobEvent(new UUID(0, id), TAG, 1, NOON, what)));
    }

    private void write(Change change) {
        entries.add(new Entry(entries.size() + 1, NOON, new Author("anna", ""), change, "seal " + entries.size()));
    }
}
