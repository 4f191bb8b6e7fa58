package slotledger.model.module;

/** Mechanical form; together with the generation it gives the pin count, never the other way round. */
public enum Form {
    SIMM_30("30-pin SIMM"),
    SIMM_72("72-pin SIMM"),
    DIMM("DIMM"),
    DIMM_100("100-pin DIMM"),
    SO_DIMM("SO-DIMM"),
    SO_DIMM_72("72-pin SO-DIMM"),
    MICRO_DIMM("MicroDIMM"),
    MINI_DIMM("Mini-DIMM"),
    RIMM_184("184-pin RIMM"),
    RIMM_232("232-pin RIMM"),
    CAMM2("CAMM2"),
    LPCAMM2("LPCAMM2"),
    /** Chips soldered to the board. */
    SOLDERED("soldered");

    private final String text;

    Form(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
