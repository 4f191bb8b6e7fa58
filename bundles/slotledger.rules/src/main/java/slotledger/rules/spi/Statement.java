package slotledger.rules.spi;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.source.Source;

/**
 * The words of a report.
 *
 * @param sentence one sentence with the numbers compared
 * @param slots    labels of the slots concerned; empty means the board as a whole
 * @param source   who says so; empty means the source of the rule's page
 * @param remedy   what to do, or how to find the missing fact; empty means what the rule's page says
 */
public record Statement(String sentence, List<String> slots, Optional<Source> source, Optional<String> remedy) {

    public Statement {
        slots = List.copyOf(slots);
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(remedy, "remedy");
        if (sentence.isBlank()) {
            throw new IllegalArgumentException("The sentence of a statement must not be blank.");
        }
    }

    public static Statement of(String sentence) {
        return new Statement(sentence, List.of(), Optional.empty(), Optional.empty());
    }

    public Statement in(List<String> labels) {
        return new Statement(sentence, labels, source, remedy);
    }

    public Statement in(Placed module) {
        return in(List.of(module.label()));
    }

    public Statement by(Source known) {
        return new Statement(sentence, slots, Optional.of(known), remedy);
    }

    public Statement advising(String known) {
        return new Statement(sentence, slots, source, Optional.of(known));
    }
}
