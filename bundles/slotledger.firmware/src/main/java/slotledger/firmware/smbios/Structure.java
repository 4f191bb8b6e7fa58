package slotledger.firmware.smbios;

import java.util.Optional;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;

/**
 * One structure of a table, or one record of a list of them.
 *
 * @param handle the number by which other structures refer to it; made up where a list has none
 * @param facts  those of the class that is named after the kind, such as {@link DeviceFacts}
 */
public record Structure(StructureKind kind, int handle, Facts facts) {

    public <T> Optional<T> get(Fact<T> fact) {
        return facts.get(fact);
    }

    /** For people: "Memory Device 0x1100". */
    public String name() {
        return "%s 0x%04X".formatted(kind.title(), handle);
    }
}
