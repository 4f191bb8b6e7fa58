package slotledger.firmware.smbios;

import java.util.Optional;

/** The structures that memory needs; numbers and titles are those of DSP0134, section 7. */
public enum StructureKind {
    BIOS(0, "BIOS Information"),
    SYSTEM(1, "System Information"),
    BOARD(2, "Base Board Information"),
    CHASSIS(3, "Chassis Information"),
    PROCESSOR(4, "Processor Information"),
    MEMORY_CONTROLLER(5, "Memory Controller Information"),
    MEMORY_MODULE(6, "Memory Module Information"),
    ARRAY(16, "Physical Memory Array"),
    DEVICE(17, "Memory Device"),
    ARRAY_ADDRESS(19, "Memory Array Mapped Address"),
    DEVICE_ADDRESS(20, "Memory Device Mapped Address");

    private final int type;
    private final String title;

    StructureKind(int type, String title) {
        this.type = type;
        this.title = title;
    }

    public int type() {
        return type;
    }

    public String title() {
        return title;
    }

    /** The kind of a type number; empty where memory doesn't need it. */
    public static Optional<StructureKind> of(int type) {
        for (StructureKind kind : values()) {
            if (kind.type == type) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
