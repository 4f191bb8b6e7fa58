package slotledger.model.finding;

/** How much a finding matters, worst first. */
public enum Severity {
    /** A row or file could not be used as it is. */
    ERROR("error"),
    /** Used, but something is probably wrong or was assumed. */
    WARNING("warning"),
    /** Good to know. */
    NOTE("note");

    private final String text;

    Severity(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
