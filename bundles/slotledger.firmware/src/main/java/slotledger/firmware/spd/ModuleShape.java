package slotledger.firmware.spd;

/** What kind of module an SPD image says it sits on. */
public enum ModuleShape {
    UDIMM("UDIMM"),
    RDIMM("RDIMM"),
    LRDIMM("LRDIMM"),
    FB_DIMM("FB-DIMM"),
    BUFFERED_DIMM("Buffered DIMM"),
    SO_DIMM("SO-DIMM"),
    SO_UDIMM_72("72b-SO-UDIMM"),
    SO_RDIMM_72("72b-SO-RDIMM"),
    SO_DIMM_16("16b-SO-DIMM"),
    SO_DIMM_32("32b-SO-DIMM"),
    MICRO_DIMM("Micro-DIMM"),
    MINI_RDIMM("Mini-RDIMM"),
    MINI_UDIMM("Mini-UDIMM"),
    CUDIMM("CUDIMM"),
    CSODIMM("CSODIMM"),
    MRDIMM("MRDIMM"),
    CAMM2("CAMM2"),
    DDIMM("DDIMM"),
    SOLDERED("Soldered down");

    private final String text;

    ModuleShape(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }

    @Override
    public String toString() {
        return text;
    }
}
