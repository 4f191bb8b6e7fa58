package slotledger.firmware.internal.smbios;

import java.util.List;
import java.util.Optional;

/** Kinds of chassis by number: DSP0134, section 7.4.1; bit 7 tells a lock. */
final class ChassisTypes {

    private static final List<String> TEXTS = List.of("Other", "Unknown", "Desktop", "Low Profile Desktop",
            "Pizza Box", "Mini Tower", "Tower", "Portable", "Laptop", "Notebook", "Hand Held", "Docking Station",
            "All In One", "Sub Notebook", "Space-saving", "Lunch Box", "Main Server Chassis", "Expansion Chassis",
            "Sub Chassis", "Bus Expansion Chassis", "Peripheral Chassis", "RAID Chassis", "Rack Mount Chassis",
            "Sealed-case PC", "Multi-system", "CompactPCI", "AdvancedTCA", "Blade", "Blade Enclosing", "Tablet",
            "Convertible", "Detachable", "IoT Gateway", "Embedded PC", "Mini PC", "Stick PC");

    private static final int UNKNOWN = 2;

    private ChassisTypes() {
    }

    static Optional<String> text(long raw) {
        int code = (int) raw & 0x7F;
        return code < 1 || code == UNKNOWN || code > TEXTS.size() ? Optional.empty() : Optional.of(TEXTS.get(code - 1));
    }
}
