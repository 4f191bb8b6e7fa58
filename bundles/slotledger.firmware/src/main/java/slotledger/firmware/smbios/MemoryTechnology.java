package slotledger.firmware.smbios;

import slotledger.firmware.fact.Coded;

/** What a device is made of: DSP0134, section 7.18.6 (structure type 17, byte 28h). */
public enum MemoryTechnology implements Coded {
    OTHER(0x01, "Other"),
    UNKNOWN(0x02, "Unknown"),
    DRAM(0x03, "DRAM"),
    NVDIMM_N(0x04, "NVDIMM-N"),
    NVDIMM_F(0x05, "NVDIMM-F"),
    NVDIMM_P(0x06, "NVDIMM-P"),
    PERSISTENT(0x07, "Intel Optane persistent memory"),
    MRDIMM(0x08, "MRDIMM");

    private final int code;
    private final String text;

    MemoryTechnology(int code, String text) {
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
