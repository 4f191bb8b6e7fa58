package slotledger.firmware.spd;

import slotledger.firmware.fact.Coded;

/** The kind of memory that an SPD image describes: byte 2 of every one (JEDEC JESD21-C 4.1.2, JESD400-5). */
public enum SpdType implements Coded {
    FPM(0x01, "Fast page mode DRAM"),
    EDO(0x02, "EDO DRAM"),
    SDR(0x04, "SDR SDRAM"),
    DDR(0x07, "DDR SDRAM"),
    DDR2(0x08, "DDR2 SDRAM"),
    DDR2_FB(0x09, "DDR2 FB-DIMM"),
    DDR2_FB_PROBE(0x0A, "DDR2 FB-DIMM probe"),
    DDR3(0x0B, "DDR3 SDRAM"),
    DDR4(0x0C, "DDR4 SDRAM"),
    DDR4E(0x0E, "DDR4E SDRAM"),
    LPDDR3(0x0F, "LPDDR3 SDRAM"),
    LPDDR4(0x10, "LPDDR4 SDRAM"),
    LPDDR4X(0x11, "LPDDR4X SDRAM"),
    DDR5(0x12, "DDR5 SDRAM"),
    LPDDR5(0x13, "LPDDR5 SDRAM"),
    NVDIMM_P(0x14, "DDR5 NVDIMM-P"),
    LPDDR5X(0x15, "LPDDR5X SDRAM");

    private final int code;
    private final String text;

    SpdType(int code, String text) {
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
}
