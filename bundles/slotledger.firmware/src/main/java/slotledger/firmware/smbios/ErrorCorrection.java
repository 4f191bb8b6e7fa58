package slotledger.firmware.smbios;

import slotledger.firmware.fact.Coded;

/** What an array corrects: DSP0134, section 7.17.3 (structure type 16, byte 06h). */
public enum ErrorCorrection implements Coded {
    OTHER(0x01, "Other"),
    UNKNOWN(0x02, "Unknown"),
    NONE(0x03, "None"),
    PARITY(0x04, "Parity"),
    SINGLE_BIT(0x05, "Single-bit ECC"),
    MULTI_BIT(0x06, "Multi-bit ECC"),
    CRC(0x07, "CRC");

    private final int code;
    private final String text;

    ErrorCorrection(int code, String text) {
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
        return this == UNKNOWN;
    }
}
