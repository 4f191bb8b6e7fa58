package slotledger.cli.internal;

import java.util.List;
import java.util.stream.Collectors;
import slotledger.model.project.Change;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;

/** Rounds and what happened to jobs, in words. */
final class WorkText {

    /** As many events of one entry are told of singly. */
    private static final int SHOWN = 4;

    private WorkText() {
    }

    static String words(Change change) {
        if (change instanceof Change.Rounds made) {
            long machines = made.rounds().stream().mapToLong(round -> round.machines().size()).sum();
            return made.rounds().isEmpty() ? "took the rounds of plan " + made.plan() + " away"
                    : "made %s of plan %d for %s".formatted(count(made.rounds().size(), "round"), made.plan(),
                            count(machines, "machine"));
        }
        List<JobEvent> events = ((Change.Worked) change).events();
        String told = events.stream().limit(SHOWN).map(event -> event.machine() + " " + words(event.what()))
                .collect(Collectors.joining("; "));
        return events.size() > SHOWN ? told + "; and " + (events.size() - SHOWN) + " more" : told;
    }

    static String words(What what) {
        if (what instanceof What.Became became) {
            return "is " + became.state().text() + (became.reason().isEmpty() ? "" : ": " + became.reason());
        }
        if (what instanceof What.Ticked ticked) {
            return "step " + ticked.step() + (ticked.done() ? " done" : " not done after all");
        }
        if (what instanceof What.SerialRead read) {
            return read.serial().isEmpty() ? "serial number in " + read.slot() + " taken back"
                    : "holds " + read.serial() + " in " + read.slot();
        }
        What.Deviated other = (What.Deviated) what;
        return "is other than planned" + (other.slot().isEmpty() ? "" : " in " + other.slot()) + ": " + other.text();
    }

    static String count(long number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
