package slotledger.firmware.smbios;

import slotledger.firmware.fact.Coded;

/** Technology of a memory device: DSP0134, section 7.18.2 (structure type 17, byte 12h). */
public enum MemoryType implements Coded {
    OTHER(0x01, "Other"),
    UNKNOWN(0x02, "Unknown"),
    DRAM(0x03, "DRAM"),
    EDRAM(0x04, "EDRAM"),
    VRAM(0x05, "VRAM"),
    SRAM(0x06, "SRAM"),
    RAM(0x07, "RAM"),
    ROM(0x08, "ROM"),
    FLASH(0x09, "Flash"),
    EEPROM(0x0A, "EEPROM"),
    FEPROM(0x0B, "FEPROM"),
    EPROM(0x0C, "EPROM"),
    CDRAM(0x0D, "CDRAM"),
    THREE_D_RAM(0x0E, "3DRAM"),
    SDRAM(0x0F, "SDRAM"),
    SGRAM(0x10, "SGRAM"),
    RDRAM(0x11, "RDRAM"),
    DDR(0x12, "DDR"),
    DDR2(0x13, "DDR2"),
    DDR2_FB_DIMM(0x14, "DDR2 FB-DIMM"),
    DDR3(0x18, "DDR3"),
    FBD2(0x19, "FBD2"),
    DDR4(0x1A, "DDR4"),
    LPDDR(0x1B, "LPDDR"),
    LPDDR2(0x1C, "LPDDR2"),
    LPDDR3(0x1D, "LPDDR3"),
    LPDDR4(0x1E, "LPDDR4"),
    LOGICAL_NON_VOLATILE(0x1F, "Logical non-volatile device"),
    HBM(0x20, "HBM"),
    HBM2(0x21, "HBM2"),
    DDR5(0x22, "DDR5"),
    LPDDR5(0x23, "LPDDR5"),
    HBM3(0x24, "HBM3"),
    MRDIMM(0x25, "MRDIMM");

    private final int code;
    private final String text;

    MemoryType(int code, String text) {
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
