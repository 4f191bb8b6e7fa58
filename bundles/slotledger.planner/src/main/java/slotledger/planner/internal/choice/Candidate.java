package slotledger.planner.internal.choice;

import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Operation;

/**
 * A population a machine of a class could get.
 *
 * @param after    what is in the slots then
 * @param used     modules that come from outside the machine, by number of their kind
 * @param freed    modules that leave the machine, by number of their kind
 * @param touches  modules and fillers that leave, enter or change their slot
 * @param onTarget whether the target is met then; false without a target
 * @param runs     how it runs
 * @param quality  place among the ways the candidates of the class run, 0 for the least
 */
public record Candidate(
        Population after,
        SortedMap<Integer, Integer> used,
        SortedMap<Integer, Integer> freed,
        int touches,
        boolean onTarget,
        Operation runs,
        int quality) {

    public Candidate {
        Objects.requireNonNull(after, "after");
        used = new TreeMap<>(used);
        freed = new TreeMap<>(freed);
        Objects.requireNonNull(runs, "runs");
    }

    /** The machine stays as it is. */
    static Candidate unchanged(Population now, boolean onTarget, Operation runs) {
        return new Candidate(now, new TreeMap<>(Map.of()), new TreeMap<>(Map.of()), 0, onTarget, runs, 0);
    }

    public boolean opens() {
        return touches > 0;
    }

    Candidate withQuality(int rank) {
        return new Candidate(after, used, freed, touches, onTarget, runs, rank);
    }
}
