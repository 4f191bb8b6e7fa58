package slotledger.rules.spi;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;

/**
 * The words of a report.
 *
 * @param sentence one sentence with the numbers compared
 * @param slots    labels of the slots concerned; empty means the board as a whole
 * @param source   who says so; empty means the source of the rule's page
 * @param remedy   what to do; empty means what the rule's page says, or the cheapest way to find the missing fact
 * @param missing  the fact nobody knows; always there where the weight is unknown, without meaning for other weights
 */
public record Statement(
        String sentence,
        List<String> slots,
        Optional<Source> source,
        Optional<String> remedy,
        Optional<MissingFact> missing) {

    public Statement {
        slots = List.copyOf(slots);
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(remedy, "remedy");
        Objects.requireNonNull(missing, "missing");
        if (sentence.isBlank()) {
            throw new IllegalArgumentException("The sentence of a statement must not be blank.");
        }
    }

    public static Statement of(String sentence) {
        return new Statement(sentence, List.of(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    public Statement in(List<String> labels) {
        return new Statement(sentence, labels, source, remedy, missing);
    }

    public Statement in(Placed module) {
        return in(List.of(module.label()));
    }

    public Statement by(Source known) {
        return new Statement(sentence, slots, Optional.of(known), remedy, missing);
    }

    public Statement advising(String known) {
        return new Statement(sentence, slots, source, Optional.of(known), missing);
    }

    /** For a weight of unknown: which fact is missing. */
    public Statement missing(MissingFact known) {
        return new Statement(sentence, slots, source, remedy, Optional.of(known));
    }
}
