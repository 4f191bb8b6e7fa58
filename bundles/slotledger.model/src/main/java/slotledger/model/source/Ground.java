package slotledger.model.source;

/** What a fact rests on, surest first. */
public enum Ground {
    /** A maker's document or a published standard. */
    DOCUMENT("document"),
    /** Measured or tried on the machine itself. */
    MEASURED("measured"),
    /** What the machine's firmware reports. */
    FIRMWARE("firmware table"),
    /** A cell of a spreadsheet. */
    SPREADSHEET("spreadsheet"),
    /** A person's word. */
    PERSON("a person's word"),
    /** Common practice of the trade, without a document. */
    PRACTICE("common practice, no source"),
    /** Written down from memory, not confirmed in a document. */
    MEMORY("from memory"),
    /** Computed from other facts. */
    COMPUTED("computed");

    private final String text;

    Ground(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
