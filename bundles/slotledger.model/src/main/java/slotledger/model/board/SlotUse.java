package slotledger.model.board;

/** What can be done with a slot. */
public enum SlotUse {
    /** A socket: modules go in and out. */
    SOCKET,
    /** Memory soldered to the board: counts, can't be opened. */
    SOLDERED,
    /** A connector that is there but not wired: nothing works in it. */
    DEAD
}
