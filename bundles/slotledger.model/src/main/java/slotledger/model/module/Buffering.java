package slotledger.model.module;

/** What stands between the board and the chips of a module. */
public enum Buffering {
    UNBUFFERED("unbuffered", "UDIMM"),
    REGISTERED("registered", "RDIMM"),
    LOAD_REDUCED("load-reduced", "LRDIMM"),
    FULLY_BUFFERED("fully buffered", "FB-DIMM");

    private final String text;
    private final String shortName;

    Buffering(String text, String shortName) {
        this.text = text;
        this.shortName = shortName;
    }

    public String text() {
        return text;
    }

    /** The name the trade gives a DIMM of this kind. */
    public String shortName() {
        return shortName;
    }
}
