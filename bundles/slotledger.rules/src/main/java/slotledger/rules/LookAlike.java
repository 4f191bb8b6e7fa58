package slotledger.rules;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import slotledger.model.source.Source;

/**
 * Two things that are easily taken for each other, and of which at least one is wrong where the other is wanted.
 *
 * @param id          stable id, lower-case words with hyphens
 * @param rules       ids of the rules whose objection it explains
 * @param one         the one thing, with its article: "a DDR2 DIMM"
 * @param other       the other thing
 * @param oneForOther what one sees of the one thing where the other is wanted; empty where it does no harm
 * @param otherForOne what one sees of the other thing where the one is wanted; empty where it does no harm
 * @param byEye       how to tell them apart by looking at them
 * @param byLabel     how to tell them apart by their labels
 * @param source      who says so
 */
public record LookAlike(
        String id,
        Set<String> rules,
        String one,
        String other,
        Optional<Mistake> oneForOther,
        Optional<Mistake> otherForOne,
        String byEye,
        String byLabel,
        Source source) {

    public LookAlike {
        rules = Set.copyOf(rules);
        Objects.requireNonNull(source, "source");
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException(
                    "The id of look-alikes (%s) must be lower-case words with hyphens.".formatted(id));
        }
        if (one.isBlank() || other.isBlank() || byEye.isBlank() || byLabel.isBlank()) {
            throw new IllegalArgumentException(
                    "The look-alikes %s must have names and say how to tell them apart.".formatted(id));
        }
        if (oneForOther.isEmpty() && otherForOne.isEmpty()) {
            throw new IllegalArgumentException(
                    "One of the look-alikes %s must be wrong in the place of the other.".formatted(id));
        }
    }

    /** The same with the two things exchanged. */
    public LookAlike turned() {
        return new LookAlike(id, rules, other, one, otherForOne, oneForOther, byEye, byLabel, source);
    }

    /** "Tell them apart. By eye: ... On the label: ..." */
    public String howToTell() {
        return "Tell them apart. By eye: " + byEye + " On the label: " + byLabel;
    }

    /**
     * What happens where the wrong one is used.
     *
     * @param sight    what one sees
     * @param sentence the same in a sentence, with the reason
     */
    public record Mistake(Sight sight, String sentence) {
        public Mistake {
            Objects.requireNonNull(sight, "sight");
            if (sentence.isBlank()) {
                throw new IllegalArgumentException("The sentence of a mistake must not be blank.");
            }
        }
    }

    /** What one sees where the wrong one is used. */
    public enum Sight {
        DOES_NOT_GO_IN("does not go in"),
        NO_START("no start"),
        HALF_OR_LESS("half size or less"),
        NOT_SEEN("not seen"),
        DAMAGE_POSSIBLE("damage possible"),
        RUNS_SLOWER("runs slower"),
        NOT_CHECKED("errors not checked");

        private final String text;

        Sight(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }
}
