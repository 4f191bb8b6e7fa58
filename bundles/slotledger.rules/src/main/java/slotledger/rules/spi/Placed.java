package slotledger.rules.spi;

import java.util.Optional;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.module.ModuleKind;

/**
 * A module in its slot.
 *
 * @param slot      the slot
 * @param channel   index of its channel in the board's list
 * @param processor the processor the channel belongs to, 1 for the first
 * @param kind      the module
 * @param takes     what the slot takes in the way looked at; empty where that way says nothing of the slot
 */
public record Placed(Slot slot, int channel, int processor, ModuleKind kind, Optional<Takes> takes) {

    public String label() {
        return slot.label();
    }

    public boolean isSoldered() {
        return slot.use() == SlotUse.SOLDERED;
    }

    /** What the slot takes; only for a module of {@link Situation#described()}. */
    public Takes way() {
        return takes.orElseThrow(() -> new IllegalStateException(
                "The slot %s must be described. Maybe the rule should ask for described modules only."
                        .formatted(label())));
    }

    /** "the 8 GB module in slot A2", for the middle of a sentence. */
    public String inSentence() {
        return "the" + toString().substring("The".length());
    }

    /** "The 8 GB module in slot A2", for the start of a sentence. */
    @Override
    public String toString() {
        return isSoldered()
                ? "The soldered " + kind.capacity() + " (" + label() + ")"
                : "The " + kind.capacity() + " module in slot " + label();
    }
}
