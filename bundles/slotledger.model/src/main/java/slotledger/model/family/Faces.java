package slotledger.model.family;

/** How the contacts on the two faces of a module's edge belong together. */
public enum Faces {
    /** Two contacts that face each other carry one signal: the mark of a SIMM. */
    JOINED("the contacts of both faces are the same signal"),
    /** Each contact has a signal of its own: the mark of a DIMM. */
    SEPARATE("each contact of both faces has a signal of its own"),
    /** There is no edge with contacts. */
    NONE("no contacts on an edge");

    private final String text;

    Faces(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
