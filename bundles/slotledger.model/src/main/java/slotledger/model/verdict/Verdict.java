package slotledger.model.verdict;

import java.util.List;
import java.util.Objects;

/**
 * What the rules say of a population on a board.
 *
 * @param weight    the worst weight of any reason
 * @param operation how it runs, if it runs
 * @param reasons   every rule looked at, worst first
 */
public record Verdict(Weight weight, Operation operation, List<Reason> reasons) {

    public Verdict {
        Objects.requireNonNull(weight, "weight");
        Objects.requireNonNull(operation, "operation");
        reasons = List.copyOf(reasons);
        Weight worst = reasons.stream().map(Reason::weight).reduce(Weight.PASSES, Weight::worse);
        if (worst != weight) {
            throw new IllegalArgumentException(
                    "The weight (%s) must be the worst of the reasons (%s).".formatted(weight, worst));
        }
    }

    /** Reasons of one weight. */
    public List<Reason> reasons(Weight wanted) {
        return reasons.stream().filter(reason -> reason.weight() == wanted).toList();
    }

    public boolean blocks() {
        return weight == Weight.BLOCKS;
    }
}
