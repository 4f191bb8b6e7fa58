package slotledger.intake.internal.value;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.module.Filler;

/**
 * What a text says of one slot.
 *
 * @param label  the slot's name, where the text gives one
 * @param state  what kind of statement it is
 * @param facts  of the module, where there is one
 * @param filler the filler, where there is one
 * @param part   part number; may be empty
 * @param text   the text itself
 * @param doubts what was assumed or not understood
 */
public record SlotReading(
        Optional<String> label,
        State state,
        Facts facts,
        Optional<Filler> filler,
        String part,
        String text,
        List<Doubt> doubts) {

    /** What kind of statement is made of a slot. */
    public enum State {
        EMPTY,
        MODULE,
        FILLER,
        /** Something is said, but not what the capacity is. */
        UNREAD
    }

    public SlotReading {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(state, "state");
        facts = facts.copy();
        Objects.requireNonNull(filler, "filler");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(text, "text");
        doubts = List.copyOf(doubts);
    }

    static SlotReading empty(String text) {
        return new SlotReading(Optional.empty(), State.EMPTY, new Facts(), Optional.empty(), "", text, List.of());
    }

    static SlotReading filler(Filler filler, String text) {
        return new SlotReading(Optional.empty(), State.FILLER, new Facts(), Optional.of(filler), "", text, List.of());
    }

    static SlotReading unread(String text, Facts facts, String part, List<Doubt> doubts) {
        return new SlotReading(Optional.empty(), State.UNREAD, facts, Optional.empty(), part, text, doubts);
    }

    static SlotReading module(String text, Facts facts, String part, List<Doubt> doubts) {
        return new SlotReading(Optional.empty(), State.MODULE, facts, Optional.empty(), part, text, doubts);
    }

    SlotReading inSlot(Optional<String> known) {
        return new SlotReading(known, state, facts, filler, part, text, doubts);
    }

    /** The same statement with other facts. */
    public SlotReading withFacts(Facts known) {
        return new SlotReading(label, state, known, filler, part, text, doubts);
    }
}
