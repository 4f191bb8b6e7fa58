package slotledger.model.module;

/** Memory technology; a module of one never works in a slot of another. */
public enum Generation {
    FPM("FPM"),
    EDO("EDO"),
    SDR("SDR"),
    RDRAM("RDRAM"),
    DDR("DDR"),
    DDR2("DDR2"),
    DDR3("DDR3"),
    DDR4("DDR4"),
    DDR5("DDR5"),
    LPDDR3("LPDDR3"),
    LPDDR4("LPDDR4"),
    LPDDR4X("LPDDR4X"),
    LPDDR5("LPDDR5"),
    LPDDR5X("LPDDR5X");

    private final String text;

    Generation(String text) {
        this.text = text;
    }

    /** The usual written name. */
    public String text() {
        return text;
    }
}
