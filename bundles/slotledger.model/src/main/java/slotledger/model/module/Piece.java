package slotledger.model.module;

import slotledger.model.unit.Capacity;

/** What goes into a slot, is bought, owned, pulled and counted: a memory module or a filler. */
public sealed interface Piece permits ModuleKind, Filler {

    /** What it adds to a machine's memory; none for a filler. */
    Capacity capacity();
}
