package slotledger.model.board;

/** Whether a machine keeps memory back against errors; a setting of its firmware. */
public enum Redundancy {
    /** All memory is used. */
    NONE("independent"),
    /** Everything is kept twice. */
    MIRRORED("mirrored"),
    /** Some ranks wait to replace others. */
    SPARED("spare");

    private final String text;

    Redundancy(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
