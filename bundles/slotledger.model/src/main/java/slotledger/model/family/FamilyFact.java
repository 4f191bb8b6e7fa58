package slotledger.model.family;

/** Facts of a family that have a source of their own. */
public enum FamilyFact {
    PINS("pins"),
    FACES("faces"),
    NOTCH("notch"),
    WIDTH("width"),
    VOLTS("volts"),
    GRADES("grades"),
    ACCESS_TIMES("access times"),
    SIZES("sizes"),
    STANDARDS("standards"),
    REMARK("remark");

    private final String text;

    FamilyFact(String text) {
        this.text = text;
    }

    /** "access times". */
    public String text() {
        return text;
    }
}
