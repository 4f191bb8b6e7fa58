package slotledger.firmware.internal.cim;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.internal.words.Placeholders;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/**
 * What machine the records are of. Source: Microsoft, classes Win32_ComputerSystem, Win32_ComputerSystemProduct,
 * Win32_BaseBoard, Win32_SystemEnclosure and Win32_Processor.
 */
final class CimIdentity {

    private CimIdentity() {
    }

    static boolean tells(CimRecord record) {
        return record.isSystem() || record.isProduct() || record.isBoard() || record.isChassis()
                || record.isProcessor();
    }

    /** @param host the machine's name in its network; may be empty */
    static List<Structure> of(String host, List<CimRecord> records) {
        List<Structure> structures = new ArrayList<>();
        Facts.Builder system = new Facts.Builder();
        if (!host.isEmpty()) {
            system.known(MachineFacts.HOST, host, host);
        }
        for (CimRecord record : select(records, CimRecord::isSystem)) {
            put(system, MachineFacts.MAKER, record, "Manufacturer");
            put(system, MachineFacts.PRODUCT, record, "Model");
            put(system, MachineFacts.SKU, record, "SystemSKUNumber");
            put(system, MachineFacts.FAMILY, record, "SystemFamily");
        }
        for (CimRecord record : select(records, CimRecord::isProduct)) {
            put(system, MachineFacts.MAKER, record, "Vendor");
            put(system, MachineFacts.PRODUCT, record, "Name");
            put(system, MachineFacts.VERSION, record, "Version");
            put(system, MachineFacts.SERIAL, record, "IdentifyingNumber");
            put(system, MachineFacts.UUID, record, "UUID");
        }
        if (!system.build().all().isEmpty()) {
            structures.add(new Structure(StructureKind.SYSTEM, 1, system.build()));
        }
        for (CimRecord record : select(records, CimRecord::isBoard)) {
            Facts.Builder board = new Facts.Builder();
            put(board, MachineFacts.MAKER, record, "Manufacturer");
            put(board, MachineFacts.PRODUCT, record, "Product");
            put(board, MachineFacts.VERSION, record, "Version");
            structures.add(new Structure(StructureKind.BOARD, 2, board.build()));
        }
        for (CimRecord record : select(records, CimRecord::isChassis)) {
            Facts.Builder chassis = new Facts.Builder();
            put(chassis, MachineFacts.SERIAL, record, "SerialNumber");
            put(chassis, MachineFacts.ASSET_TAG, record, "SMBIOSAssetTag");
            structures.add(new Structure(StructureKind.CHASSIS, 3, chassis.build()));
        }
        for (CimRecord record : select(records, CimRecord::isProcessor)) {
            Facts.Builder processor = new Facts.Builder();
            put(processor, MachineFacts.SOCKET, record, "SocketDesignation");
            put(processor, MachineFacts.MAKER, record, "Manufacturer");
            put(processor, MachineFacts.VERSION, record, "Name");
            structures.add(new Structure(StructureKind.PROCESSOR, 4, processor.build()));
        }
        return structures;
    }

    private static List<CimRecord> select(List<CimRecord> records, Predicate<CimRecord> kind) {
        return records.stream().filter(kind).toList();
    }

    private static void put(Facts.Builder facts, Fact<String> fact, CimRecord record, String property) {
        if (!record.get(property).isBlank()) {
            facts.told(fact, record.get(property), Placeholders.meaning(record.get(property)));
        }
    }
}
