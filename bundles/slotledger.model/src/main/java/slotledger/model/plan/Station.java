package slotledger.model.plan;

import java.util.Objects;
import slotledger.model.machine.AssetTag;

/** Where a module is before or after a move. */
public sealed interface Station {

    /**
     * In a slot of a machine.
     *
     * @param machine which machine
     * @param slot    label of the slot
     */
    record InSlot(AssetTag machine, String slot) implements Station {
        public InSlot {
            Objects.requireNonNull(machine, "machine");
            Objects.requireNonNull(slot, "slot");
        }
    }

    /** On the shelf of modules owned: before a move a module kept there, after it one to keep. */
    record OnShelf() implements Station {}

    /**
     * Delivered with an order.
     *
     * @param offer id of the offer
     */
    record FromOrder(String offer) implements Station {
        public FromOrder {
            Objects.requireNonNull(offer, "offer");
        }
    }

    /** Given away, sold or recycled as electronics waste. */
    record Disposal() implements Station {}
}
