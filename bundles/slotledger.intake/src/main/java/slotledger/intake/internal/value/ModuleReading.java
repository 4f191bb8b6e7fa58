package slotledger.intake.internal.value;

import java.util.List;
import java.util.Objects;
import slotledger.model.observed.LabelPart;

/**
 * What a text says of one or several equal modules.
 *
 * @param count      how many modules; 1 where the text doesn't say
 * @param counted    whether the text says how many
 * @param facts      what is known of each
 * @param part       what looks like a part number; may be empty
 * @param understood the part of the text that was understood
 * @param parts      what each part of it was taken for
 * @param rest       the part that was not; empty where all was
 * @param doubts     what was assumed
 */
public record ModuleReading(
        int count, boolean counted, Facts facts, String part, String understood, List<LabelPart> parts, String rest,
        List<Doubt> doubts) {

    public ModuleReading {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(understood, "understood");
        Objects.requireNonNull(rest, "rest");
        facts = facts.copy();
        parts = List.copyOf(parts);
        doubts = List.copyOf(doubts);
    }

    /** A note about the part that was not understood. */
    public Doubt restDoubt() {
        return Doubt.note("text-not-understood", "\"%s\" was understood, \"%s\" was not.".formatted(understood, rest),
                "capacity, type, rate and organisation of a module, such as 8GB DDR4-2666 1Rx8",
                "Check that nothing important was missed.");
    }
}
