package slotledger.firmware.smbios;

import slotledger.firmware.fact.Coded;

/** Form of a memory device: DSP0134, section 7.18.1 (structure type 17, byte 0Eh). */
public enum FormFactor implements Coded {
    OTHER(0x01, "Other"),
    UNKNOWN(0x02, "Unknown"),
    SIMM(0x03, "SIMM"),
    SIP(0x04, "SIP"),
    CHIP(0x05, "Chip"),
    DIP(0x06, "DIP"),
    ZIP(0x07, "ZIP"),
    PROPRIETARY(0x08, "Proprietary Card"),
    DIMM(0x09, "DIMM"),
    TSOP(0x0A, "TSOP"),
    ROW_OF_CHIPS(0x0B, "Row Of Chips"),
    RIMM(0x0C, "RIMM"),
    SODIMM(0x0D, "SODIMM"),
    SRIMM(0x0E, "SRIMM"),
    FB_DIMM(0x0F, "FB-DIMM"),
    DIE(0x10, "Die"),
    CAMM(0x11, "CAMM"),
    CUDIMM(0x12, "CUDIMM"),
    CSODIMM(0x13, "CSODIMM");

    private final int code;
    private final String text;

    FormFactor(int code, String text) {
        this.code = code;
        this.text = text;
    }

    @Override
    public int code() {
        return code;
    }

    @Override
    public String text() {
        return text;
    }

    @Override
    public boolean isUnknown() {
        return this == OTHER || this == UNKNOWN;
    }
}
