package slotledger.model.machine;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.unit.Capacity;

/** What is in one slot. */
public sealed interface SlotContent {

    /** Nothing is in the slot. */
    SlotContent EMPTY = new Empty();

    static SlotContent of(ModuleKind kind) {
        return new Holds(kind);
    }

    static SlotContent of(Piece piece) {
        if (piece instanceof ModuleKind kind) {
            return new Holds(kind);
        }
        return new Filled((Filler) piece);
    }

    /** The module in the slot, where there is one that could be read. */
    default Optional<ModuleKind> module() {
        return this instanceof Holds holds ? Optional.of(holds.kind()) : Optional.empty();
    }

    /** The module or filler in the slot; empty for an empty slot and for what could not be read. */
    default Optional<Piece> piece() {
        if (this instanceof Filled filled) {
            return Optional.of(filled.filler());
        }
        return module().map(Piece.class::cast);
    }

    default boolean isEmpty() {
        return this instanceof Empty;
    }

    /** What the slot adds to the machine's memory; none where nothing is known of it. */
    default Capacity capacity() {
        return module().map(ModuleKind::capacity).orElse(Capacity.NONE);
    }

    /** Nothing. */
    record Empty() implements SlotContent {
        @Override
        public String toString() {
            return "empty";
        }
    }

    /**
     * A memory module.
     *
     * @param kind what kind it is
     */
    record Holds(ModuleKind kind) implements SlotContent {
        public Holds {
            Objects.requireNonNull(kind, "kind");
        }

        @Override
        public String toString() {
            return kind.toString();
        }
    }

    /**
     * A continuity module, blank or dummy: takes the slot, gives no memory.
     *
     * @param filler which filler
     */
    record Filled(Filler filler) implements SlotContent {
        public Filled {
            Objects.requireNonNull(filler, "filler");
        }

        @Override
        public String toString() {
            return filler.text();
        }
    }

    /**
     * Something is in the slot, but what was written of it could not be read.
     *
     * @param text what was written
     */
    record Unread(String text) implements SlotContent {
        public Unread {
            Objects.requireNonNull(text, "text");
        }

        @Override
        public String toString() {
            return "unread: " + text;
        }
    }
}
