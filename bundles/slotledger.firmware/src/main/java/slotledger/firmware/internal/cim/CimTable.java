package slotledger.firmware.internal.cim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Coded;
import slotledger.firmware.fact.Fact;
import slotledger.firmware.fact.Facts;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.internal.smbios.TableChecks;
import slotledger.firmware.internal.words.Makers;
import slotledger.firmware.internal.words.Placeholders;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.ArrayLocation;
import slotledger.firmware.smbios.ArrayUse;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.ErrorCorrection;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.firmware.smbios.TypeDetail;

/** Turns a machine's records into the structures they were made of; source: Microsoft, win32-physicalmemory(array). */
final class CimTable {

    private static final int FIRST_ARRAY = 0x1000;
    private static final int FIRST_DEVICE = 0x1100;
    /** A machine with more sockets than this is none. */
    private static final int MOST_SLOTS = 1024;

    private final Problems problems = new Problems();
    private final List<Structure> structures = new ArrayList<>();
    private int arrays;
    private int devices;

    private CimTable() {
    }

    static SmbiosTable of(String machine, List<CimRecord> records) {
        CimTable table = new CimTable();
        table.structures.addAll(CimIdentity.of(machine, records));
        records.stream().filter(CimRecord::isArray).forEach(table::array);
        records.stream().filter(CimRecord::isDevice).forEach(table::device);
        table.emptySlots(machine);
        TableChecks.check(table.structures, table.problems);
        return new SmbiosTable(Optional.empty(), table.structures, table.problems.list());
    }

    private void array(CimRecord record) {
        String name = "array " + (arrays + 1);
        Facts.Builder facts = new Facts.Builder();
        coded(facts, ArrayFacts.LOCATION, record, "Location", code -> Coded.find(ArrayLocation.values(), code));
        coded(facts, ArrayFacts.USE, record, "Use", code -> Coded.find(ArrayUse.values(), code));
        coded(facts, ArrayFacts.CORRECTION, record, "MemoryErrorCorrection",
                code -> Coded.find(ErrorCorrection.values(), code));
        String property = number(record, "MaxCapacityEx", name).filter(kib -> kib > 0).isPresent()
                ? "MaxCapacityEx" : "MaxCapacity";
        number(record, property, name).ifPresent(kib -> facts.told(ArrayFacts.LARGEST, record.get(property),
                kib > 0 ? Optional.of(ByteCount.ofKib(kib)) : Optional.empty()));
        number(record, "MemoryDevices", name).ifPresent(count ->
                facts.known(ArrayFacts.DEVICES, record.get("MemoryDevices"), (int) Math.min(count, 0xFFFF)));
        structures.add(new Structure(StructureKind.ARRAY, FIRST_ARRAY + arrays++, facts.build()));
    }

    private void device(CimRecord record) {
        String name = "device " + (devices + 1);
        Facts.Builder facts = new Facts.Builder();
        if (arrays == 1) {
            facts.known(DeviceFacts.ARRAY, "", FIRST_ARRAY);
        }
        count(facts, DeviceFacts.TOTAL_WIDTH, record, "TotalWidth", name);
        count(facts, DeviceFacts.DATA_WIDTH, record, "DataWidth", name);
        number(record, "Capacity", name).ifPresent(bytes ->
                facts.known(DeviceFacts.SIZE, record.get("Capacity"), new ByteCount(bytes)));
        coded(facts, DeviceFacts.FORM, record, "FormFactor", CimCodes::form);
        text(facts, DeviceFacts.LOCATOR, record, "DeviceLocator");
        text(facts, DeviceFacts.BANK_LOCATOR, record, "BankLabel");
        Facts.Builder newer = new Facts.Builder();
        coded(newer, DeviceFacts.TYPE, record, "SMBIOSMemoryType", code -> Coded.find(MemoryType.values(), code));
        if (newer.get(DeviceFacts.TYPE).isPresent()) {
            facts.told(DeviceFacts.TYPE, record.get("SMBIOSMemoryType"), newer.get(DeviceFacts.TYPE));
        } else {
            coded(facts, DeviceFacts.TYPE, record, "MemoryType", CimCodes::type);
        }
        number(record, "TypeDetail", name).ifPresent(bits -> facts.told(DeviceFacts.DETAIL, record.get("TypeDetail"),
                Optional.of(TypeDetail.of((int) (bits & 0xFFFF)))
                        .filter(detail -> !detail.has(TypeDetail.Trait.UNKNOWN))));
        count(facts, DeviceFacts.RATE, record, "Speed", name);
        if (record.values().containsKey("Manufacturer")) {
            facts.told(DeviceFacts.MAKER, record.get("Manufacturer"), Makers.meaning(record.get("Manufacturer")));
        }
        text(facts, DeviceFacts.SERIAL, record, "SerialNumber");
        text(facts, DeviceFacts.PART, record, "PartNumber");
        count(facts, DeviceFacts.RANKS, record, "Attributes", name);
        count(facts, DeviceFacts.CONFIGURED_RATE, record, "ConfiguredClockSpeed", name);
        count(facts, DeviceFacts.LOWEST_VOLTAGE, record, "MinVoltage", name);
        count(facts, DeviceFacts.HIGHEST_VOLTAGE, record, "MaxVoltage", name);
        count(facts, DeviceFacts.CONFIGURED_VOLTAGE, record, "ConfiguredVoltage", name);
        structures.add(new Structure(StructureKind.DEVICE, FIRST_DEVICE + devices++, facts.build()));
    }

    /** The class has no record of an empty slot: how many there are says the array, and what they are called nobody. */
    private void emptySlots(String machine) {
        int counted = structures.stream().filter(one -> one.kind() == StructureKind.ARRAY)
                .filter(one -> one.get(ArrayFacts.USE).filter(use -> use != ArrayUse.SYSTEM_MEMORY).isEmpty())
                .mapToInt(one -> one.get(ArrayFacts.DEVICES).orElse(0)).sum();
        if (arrays == 0) {
            problems.add(Problem.of(machine.isEmpty() ? "the records" : machine, "no record of an array",
                    "Win32_PhysicalMemoryArray too: without it empty slots stay unknown"));
        }
        int missing = Math.min(counted, MOST_SLOTS) - devices;
        for (int i = 0; i < missing; i++) {
            Facts.Builder facts = new Facts.Builder().known(DeviceFacts.SIZE, "", ByteCount.NOTHING);
            if (arrays == 1) {
                facts.known(DeviceFacts.ARRAY, "", FIRST_ARRAY);
            }
            structures.add(new Structure(StructureKind.DEVICE, FIRST_DEVICE + devices++, facts.build()));
        }
    }

    private static void text(Facts.Builder facts, Fact<String> fact, CimRecord record, String property) {
        if (record.values().containsKey(property)) {
            facts.told(fact, record.get(property), Placeholders.meaning(record.get(property)));
        }
    }

    private void count(Facts.Builder facts, Fact<Integer> fact, CimRecord record, String property, String name) {
        number(record, property, name).ifPresent(number -> facts.told(fact, record.get(property),
                Optional.of((int) Math.min(number, Integer.MAX_VALUE)).filter(value -> value > 0)));
    }

    private <T> void coded(Facts.Builder facts, Fact<T> fact, CimRecord record, String property,
            Function<Integer, Optional<T>> meaning) {
        number(record, property, fact.name()).ifPresent(code -> facts.told(fact, record.get(property),
                meaning.apply((int) Math.min(code, 0xFFFF))
                        .filter(value -> !(value instanceof Coded coded && coded.isUnknown()))));
    }

    private Optional<Long> number(CimRecord record, String property, String name) {
        String text = record.get(property).strip();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.matches("\\d{1,18}")) {
            problems.add(Problem.of(name, "%s is \"%s\"".formatted(property, text), "a whole number"));
            return Optional.empty();
        }
        return Optional.of(Long.parseLong(text));
    }
}
