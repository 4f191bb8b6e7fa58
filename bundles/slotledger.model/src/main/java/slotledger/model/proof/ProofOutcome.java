package slotledger.model.proof;

/** How a machine ended, best first. */
public enum ProofOutcome {
    /** Every slot holds what was planned. */
    DONE("done"),
    /** Other than planned, but total and target are reached. */
    DONE_DIFFERENTLY("done differently"),
    /** As before the work. */
    NOT_DONE("not done"),
    /** Less memory than planned, and not as before; or less than before. */
    WORSE("worse"),
    /** The inventory does not list the machine, or not its memory. */
    NOT_SEEN("not seen");

    private final String text;

    ProofOutcome(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
