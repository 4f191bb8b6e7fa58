package slotledger.model.verdict;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.source.Source;

/**
 * Why a verdict holds; a tree.
 *
 * @param rule     stable id of the rule
 * @param weight   what it means
 * @param sentence one sentence for people, with the numbers compared ("16 GB in slot 1 is more than the 8 GB ...")
 * @param slots    labels of the slots concerned; empty means the board as a whole
 * @param source   who says so
 * @param remedy   what to do, or how to find the missing fact; may be empty
 * @param because  finer reasons
 * @param missing  the fact nobody knows, where the weight is unknown
 */
public record Reason(
        String rule,
        Weight weight,
        String sentence,
        List<String> slots,
        Source source,
        String remedy,
        List<Reason> because,
        Optional<MissingFact> missing) {

    public Reason {
        Objects.requireNonNull(weight, "weight");
        slots = List.copyOf(slots);
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(remedy, "remedy");
        because = List.copyOf(because);
        Objects.requireNonNull(missing, "missing");
        if (rule.isBlank() || sentence.isBlank()) {
            throw new IllegalArgumentException(
                    "The reason (%s) must name its rule and say a sentence.".formatted(rule));
        }
    }
}
