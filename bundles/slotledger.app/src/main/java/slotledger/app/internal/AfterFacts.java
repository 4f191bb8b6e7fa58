package slotledger.app.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.firmware.FirmwareReading;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.ErrorCorrection;
import slotledger.firmware.smbios.MachineFacts;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.unit.Capacity;

/**
 * What is known of one machine after the work beside its population.
 *
 * @param serials slot label to serial number of the module
 * @param total   what the inventory says the machine has in all
 * @param rate    MT/s it is set to, as firmware says
 * @param ecc     whether firmware says that errors are corrected
 */
record AfterFacts(Map<String, String> serials, Optional<Capacity> total, OptionalInt rate, Optional<Boolean> ecc) {

    static final AfterFacts NONE = new AfterFacts(Map.of(), Optional.empty(), OptionalInt.empty(), Optional.empty());

    static AfterFacts of(Machine machine, Optional<ObservedMachine> observed, List<FirmwareReading> firmware) {
        Map<String, String> serials = new LinkedHashMap<>();
        observed.ifPresent(seen -> seen.slots().stream().filter(slot -> !slot.serial().isBlank())
                .forEach(slot -> slot.label().ifPresent(label -> serials.put(label, slot.serial()))));
        Optional<SmbiosTable> table = firmware.stream().filter(FirmwareReading.OfTable.class::isInstance)
                .map(reading -> ((FirmwareReading.OfTable) reading).table())
                .filter(each -> isOf(each, machine)).findFirst();
        table.ifPresent(each -> filled(each).forEach(device -> device.get(DeviceFacts.LOCATOR).ifPresent(slot ->
                device.get(DeviceFacts.SERIAL).filter(serial -> !serial.isBlank())
                        .ifPresent(serial -> serials.put(slot, serial)))));
        return new AfterFacts(serials, observed.flatMap(ObservedMachine::total),
                table.map(AfterFacts::rate).orElse(OptionalInt.empty()), table.flatMap(AfterFacts::ecc));
    }

    /** By serial number or asset tag; firmware names are often placeholders, which match no machine. */
    private static boolean isOf(SmbiosTable table, Machine machine) {
        return table.structures().stream().filter(each -> each.kind() != StructureKind.DEVICE).anyMatch(each ->
                each.get(MachineFacts.ASSET_TAG).filter(machine.tag().value()::equals).isPresent()
                || !machine.serial().isBlank()
                        && each.get(MachineFacts.SERIAL).filter(machine.serial()::equals).isPresent());
    }

    private static List<Structure> filled(SmbiosTable table) {
        return table.memoryDevices().stream().filter(device -> device.get(DeviceFacts.SIZE).isPresent()).toList();
    }

    private static OptionalInt rate(SmbiosTable table) {
        return filled(table).stream().flatMap(device -> device.get(DeviceFacts.CONFIGURED_RATE).stream())
                .mapToInt(Integer::intValue).filter(rate -> rate > 0).min();
    }

    private static Optional<Boolean> ecc(SmbiosTable table) {
        return table.memoryArrays().stream().flatMap(array -> array.get(ArrayFacts.CORRECTION).stream())
                .filter(correction -> correction != ErrorCorrection.OTHER && correction != ErrorCorrection.UNKNOWN)
                .map(correction -> correction != ErrorCorrection.NONE && correction != ErrorCorrection.PARITY)
                .reduce((one, other) -> one && other);
    }

    /** The serial number in a slot; empty where it isn't known. */
    String serial(String slot) {
        return serials.entrySet().stream().filter(each -> each.getKey().equalsIgnoreCase(slot)).map(Map.Entry::getValue)
                .findFirst().orElse("");
    }
}
