package slotledger.model.board;

/** What a board does with an ECC module; a fact of the board. */
public enum EccOutcome {
    /** Errors are checked and corrected. */
    USED("uses ECC"),
    /** Runs, check bits ignored. */
    IGNORED("runs an ECC module without checking"),
    /** Does not start, or may be damaged. */
    REFUSED("does not start with an ECC module"),
    /** Only ECC modules are allowed. */
    REQUIRED("takes ECC modules only"),
    /** No document says. */
    UNKNOWN("not known");

    private final String text;

    EccOutcome(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
