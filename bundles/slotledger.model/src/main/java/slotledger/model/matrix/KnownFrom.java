package slotledger.model.matrix;

/** Where a project knows a module kind from. */
public enum KnownFrom {
    /** A person asked for it. */
    ASKED("asked for"),
    OFFER("on offer"),
    SHELF("on the shelf"),
    FLEET("in the fleet");

    private final String text;

    KnownFrom(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
