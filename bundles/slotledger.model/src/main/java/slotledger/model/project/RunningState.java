package slotledger.model.project;

import java.util.List;
import java.util.UUID;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;

/**
 * What holds in a project, kept up to date while entries come in. Going through the journal again for each of them
 * would take the longer the more has happened. For one thread.
 */
public final class RunningState {

    private Journal journal;
    private StateBuilder folded;

    private RunningState(Journal journal) {
        this.journal = journal;
        this.folded = journal.folded();
    }

    public static RunningState of(Journal journal) {
        return new RunningState(journal);
    }

    /** The last journal that was taken in. */
    public Journal journal() {
        return journal;
    }

    /** Takes in what a journal has more than the last one; one that isn't its continuation is gone through anew. */
    public void follow(Journal longer) {
        long known = journal.last().number();
        boolean goesOn = longer.last().number() >= known
                && longer.entries().get((int) known - 1).seal().equals(journal.last().seal());
        List<Entry> more = goesOn ? longer.entries().subList((int) known, longer.entries().size()) : List.of();
        boolean added = goesOn && more.stream().map(Entry::change).noneMatch(
                change -> change instanceof Change.TakenBack || change instanceof Change.Restored);
        journal = longer;
        if (added) {
            more.forEach(entry -> folded.add(entry, true));
        } else {
            folded = longer.folded();
        }
    }

    /** The same as {@link Journal#state()}; takes time for each machine that was worked on. */
    public ProjectState state() {
        return folded.build();
    }

    /** Whether an event was recorded, even if it was taken back since. */
    public boolean knows(UUID event) {
        return folded.work().knows(event);
    }

    /** A machine's job in a plan; planned where nothing was recorded of it. */
    public Job job(int plan, AssetTag machine) {
        return folded.work().job(plan, machine);
    }
}
