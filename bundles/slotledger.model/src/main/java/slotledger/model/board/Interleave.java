package slotledger.model.board;

/** What a board does with channels that hold different totals. */
public enum Interleave {
    /** The equal part runs over all channels, the remainder alone. */
    FLEXIBLE("the equal part runs together, the rest alone"),
    /** Unequal channels run one at a time. */
    EQUAL_ONLY("channels must hold equal totals to run together"),
    /** One channel, or channels that never run together. */
    NONE("channels never run together"),
    /** No document says. */
    UNKNOWN("not known");

    private final String text;

    Interleave(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
