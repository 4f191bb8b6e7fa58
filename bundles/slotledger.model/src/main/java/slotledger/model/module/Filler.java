package slotledger.model.module;

import slotledger.model.unit.Capacity;

/** Things that take a slot without giving memory. */
public enum Filler implements Piece {
    /** Passes the signals of an empty 184-pin RIMM slot on. */
    CONTINUITY_184("184-pin continuity module"),
    /** Passes on and terminates the signals of an empty 232-pin RIMM slot. */
    CONTINUITY_232("232-pin continuity and termination module"),
    /** Guides cooling air past an empty socket. */
    AIR_BLANK("airflow blank");

    private final String text;

    Filler(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }

    @Override
    public Capacity capacity() {
        return Capacity.NONE;
    }

    @Override
    public String toString() {
        return text;
    }
}
