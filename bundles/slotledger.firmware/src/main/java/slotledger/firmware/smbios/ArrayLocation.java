package slotledger.firmware.smbios;

import slotledger.firmware.fact.Coded;

/** Where an array is: DSP0134, section 7.17.1 (structure type 16, byte 04h). */
public enum ArrayLocation implements Coded {
    OTHER(0x01, "Other"),
    UNKNOWN(0x02, "Unknown"),
    BOARD(0x03, "System Board Or Motherboard"),
    ISA(0x04, "ISA Add-on Card"),
    EISA(0x05, "EISA Add-on Card"),
    PCI(0x06, "PCI Add-on Card"),
    MCA(0x07, "MCA Add-on Card"),
    PCMCIA(0x08, "PCMCIA Add-on Card"),
    PROPRIETARY(0x09, "Proprietary Add-on Card"),
    NUBUS(0x0A, "NuBus"),
    PC98_C20(0xA0, "PC-98/C20 Add-on Card"),
    PC98_C24(0xA1, "PC-98/C24 Add-on Card"),
    PC98_E(0xA2, "PC-98/E Add-on Card"),
    PC98_LOCAL_BUS(0xA3, "PC-98/Local Bus Add-on Card"),
    CXL(0xA4, "CXL Add-on Card");

    private final int code;
    private final String text;

    ArrayLocation(int code, String text) {
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
