package slotledger.firmware.smbios;

import slotledger.firmware.fact.Coded;

/** What an array of memory is for: DSP0134, section 7.17.2 (structure type 16, byte 05h). */
public enum ArrayUse implements Coded {
    OTHER(0x01, "Other"),
    UNKNOWN(0x02, "Unknown"),
    SYSTEM_MEMORY(0x03, "System Memory"),
    VIDEO_MEMORY(0x04, "Video Memory"),
    FLASH_MEMORY(0x05, "Flash Memory"),
    NON_VOLATILE_RAM(0x06, "Non-volatile RAM"),
    CACHE_MEMORY(0x07, "Cache Memory");

    private final int code;
    private final String text;

    ArrayUse(int code, String text) {
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
