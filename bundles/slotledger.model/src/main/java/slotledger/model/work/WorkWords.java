package slotledger.model.work;

import java.util.List;
import java.util.stream.Collectors;
import slotledger.model.work.JobEvent.What;

/** Rounds and what happened to jobs, in words. */
public final class WorkWords {

    /** As many events of one entry are told of singly. */
    private static final int SHOWN = 4;

    private WorkWords() {
    }

    /** "made 3 rounds of plan 2 for 48 machines", to go on after a person's name. */
    public static String of(int plan, List<Round> rounds) {
        long machines = rounds.stream().mapToLong(round -> round.machines().size()).sum();
        return rounds.isEmpty() ? "took the rounds of plan " + plan + " away"
                : "made %s of plan %d for %s".formatted(
                        count(rounds.size(), "round"), plan, count(machines, "machine"));
    }

    /** "K-17 step 2 done; K-17 is done". */
    public static String of(List<JobEvent> events) {
        String told = events.stream().limit(SHOWN).map(event -> event.machine() + " " + of(event.what()))
                .collect(Collectors.joining("; "));
        return events.size() > SHOWN ? told + "; and " + (events.size() - SHOWN) + " more" : told;
    }

    /** "is failed: the fan is loose", to go on after a machine's tag. */
    public static String of(What what) {
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

    /** "1 machine", "2 machines". */
    public static String count(long number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
