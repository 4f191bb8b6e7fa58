package slotledger.firmware.internal.cim;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.firmware.smbios.SmbiosTable;

/**
 * Reads records of the CIM classes Win32_PhysicalMemory and Win32_PhysicalMemoryArray, as Windows shells and management
 * tools write them. Records of several machines are told apart by the machine's name, where they have one.
 */
public final class CimRecords {

    private static final List<String> MACHINE = List.of("PSComputerName", "Node", "SystemName", "__SERVER",
            "ComputerName");

    private CimRecords() {
    }

    /** One table a machine; none where the text is no such list. */
    public static List<SmbiosTable> read(String text) {
        String start = text.stripLeading();
        List<CimRecord> records;
        if (start.startsWith("<")) {
            records = XmlRecords.read(start);
        } else if (start.startsWith("{") || start.startsWith("[")) {
            records = JsonRecords.read(start);
        } else {
            records = CsvRecords.read(text);
        }
        Map<String, List<CimRecord>> machines = new LinkedHashMap<>();
        for (CimRecord record : records) {
            if (record.isDevice() || record.isArray() || CimIdentity.tells(record)) {
                String machine = MACHINE.stream().map(record::get).filter(name -> !name.isEmpty()).findFirst()
                        .orElse("");
                machines.computeIfAbsent(machine, none -> new ArrayList<>()).add(record);
            }
        }
        machines.values().removeIf(all -> all.stream().noneMatch(one -> one.isDevice() || one.isArray()));
        return machines.entrySet().stream().map(machine -> CimTable.of(machine.getKey(), machine.getValue())).toList();
    }
}
