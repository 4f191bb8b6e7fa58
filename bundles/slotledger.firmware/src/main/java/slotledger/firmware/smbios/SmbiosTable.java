package slotledger.firmware.smbios;

import java.util.List;
import java.util.Optional;
import slotledger.firmware.fact.Problem;

/**
 * What a machine's firmware says of memory.
 *
 * @param version    of the standard, such as "2.8"; empty where the data doesn't tell
 * @param structures in the order of the table; only kinds that memory needs
 * @param problems   what is damaged or contradicts itself
 */
public record SmbiosTable(Optional<String> version, List<Structure> structures, List<Problem> problems) {

    public SmbiosTable {
        structures = List.copyOf(structures);
        problems = List.copyOf(problems);
    }

    public List<Structure> all(StructureKind kind) {
        return structures.stream().filter(structure -> structure.kind() == kind).toList();
    }

    public Optional<Structure> first(StructureKind kind) {
        return structures.stream().filter(structure -> structure.kind() == kind).findFirst();
    }

    /** The arrays of main memory, which leaves out flash, video memory and cache. */
    public List<Structure> memoryArrays() {
        return all(StructureKind.ARRAY).stream()
                .filter(array -> array.get(ArrayFacts.USE).filter(use -> use != ArrayUse.SYSTEM_MEMORY).isEmpty())
                .toList();
    }

    /** The devices of main memory: those that belong to no array of another use. */
    public List<Structure> memoryDevices() {
        List<Integer> others = all(StructureKind.ARRAY).stream().filter(array -> !memoryArrays().contains(array))
                .map(Structure::handle).toList();
        return all(StructureKind.DEVICE).stream()
                .filter(device -> device.get(DeviceFacts.ARRAY).filter(others::contains).isEmpty()).toList();
    }
}
