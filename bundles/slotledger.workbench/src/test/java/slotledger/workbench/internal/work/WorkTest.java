package slotledger.workbench.internal.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobState;
import slotledger.model.work.Round;
import slotledger.workbench.internal.lines.Line;

/** Outside check: none; what technicians type and see. */
class WorkTest {

    private static final Path PROJECT = Path.of("school");

    private static Work work(List<Round> rounds, String... tags) {
        Map<AssetTag, JobCard> cards = new LinkedHashMap<>();
        Map<AssetTag, Job> jobs = new LinkedHashMap<>();
        for (String tag : tags) {
            JobCard.Picture picture = new JobCard.Picture("", List.of());
            cards.put(new AssetTag(tag), new JobCard(new AssetTag(tag), 1, "1 of 9", "North, Lab", "KB-510",
                    "S-" + tag + "X", "8 GB to 16 GB", List.of(), List.of(), List.of("Open it."), "",
                    picture, picture,
                    List.of("A1"), List.of(), List.of()));
            jobs.put(new AssetTag(tag), Job.planned(new AssetTag(tag), 1));
        }
        return new Work(PROJECT, rounds, cards, jobs);
    }

    private static Job became(String tag, JobState state, String reason) {
        return Job.planned(new AssetTag(tag), 1).after(new JobEvent(UUID.randomUUID(), new AssetTag(tag), 1,
                Instant.EPOCH, new JobEvent.What.Became(state, reason)));
    }

    private static Round round(String id, String... tags) {
        return new Round(id, 1, "Ada", "North", "", Optional.empty(),
                List.of(tags).stream().map(AssetTag::new).toList());
    }

    @Test
    void aTagIsFoundWithoutRegardToCaseAndByAPartThatIsItsAlone() {
        Work work = work(List.of(), "U-10", "U-101", "H-7");
        assertEquals(List.of(new AssetTag("U-10")), work.meant(" u-10 "));
        assertEquals(List.of(new AssetTag("U-101")), work.meant("101"));
        assertEquals(List.of(new AssetTag("H-7")), work.meant("s-h-7x"));
        assertEquals(List.of(new AssetTag("U-10"), new AssetTag("U-101")), work.meant("u-"));
        assertEquals(List.of(), work.meant("  "));
    }

    @Test
    void theNextMachineIsThatOfTheSameRoundThatIsStillToDo() {
        Work work = work(List.of(round("r-1", "A", "C", "D"), round("r-2", "B")), "A", "B", "C", "D")
                .with(List.of(became("C", JobState.FAILED, "the fan is loose")));
        assertEquals(Optional.of(new AssetTag("D")), work.after(new AssetTag("A")));
        assertEquals(Optional.empty(), work.after(new AssetTag("D")));
        assertEquals(Optional.empty(), work.after(new AssetTag("B")));
        assertEquals(Optional.of(new AssetTag("B")), work(List.of(), "A", "B").after(new AssetTag("A")));
    }

    @Test
    void aRoundStandsOverItsMachinesAndCountsThoseThatAreThrough() {
        Work work = work(List.of(round("r-1", "A", "C")), "A", "C")
                .with(List.of(became("C", JobState.FAILED, "the fan is loose")));
        List<Line> lines = RoundLines.of(work);
        assertEquals(List.of("r-1", "Ada, North", "", "1 of 2"), lines.get(0).cells());
        assertEquals(List.of("C", "North, Lab", "8 GB to 16 GB", "failed"), lines.get(0).children().get(1).cells());
        assertEquals("C · North, Lab · 8 GB to 16 GB · failed · the fan is loose",
                lines.get(0).children().get(1).inFull());
        assertEquals("2 machines to open, 1 of them through", RoundLines.summary(work));
    }

    @Test
    void withoutRoundsTheMachinesStandAlone() {
        List<Line> lines = RoundLines.of(work(List.of(), "A", "C"));
        assertEquals(List.of("A", "C"), lines.stream().map(line -> line.cell(0)).toList());
    }
}
