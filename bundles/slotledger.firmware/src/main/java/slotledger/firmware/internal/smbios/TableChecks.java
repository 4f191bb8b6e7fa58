package slotledger.firmware.internal.smbios;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.fact.Problems;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.ErrorCorrection;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/** What a table says that can't be true together. Firmware is often wrong: it is said, and nothing is corrected. */
public final class TableChecks {

    private static final Set<MemoryType> RAMBUS = Set.of(MemoryType.RDRAM);
    private static final int CHECK_BITS_PER_BYTE = 8;

    private TableChecks() {
    }

    public static void check(List<Structure> structures, Problems problems) {
        SmbiosTable table = new SmbiosTable(Optional.empty(), structures, List.of());
        Map<Integer, Sum> sums = new HashMap<>();
        for (Structure device : table.all(StructureKind.DEVICE)) {
            device(device, problems);
            device.get(DeviceFacts.ARRAY).ifPresent(array ->
                    sums.computeIfAbsent(array, none -> new Sum()).add(device));
        }
        for (Structure array : table.memoryArrays()) {
            array(array, sums.getOrDefault(array.handle(), new Sum()), problems);
        }
        duplicates(table.memoryDevices(), problems);
    }

    private static final class Sum {
        private ByteCount size = ByteCount.NOTHING;
        private int devices;
        private boolean checkBits;

        void add(Structure device) {
            devices++;
            size = size.plus(device.get(DeviceFacts.SIZE).orElse(ByteCount.NOTHING));
            int total = device.get(DeviceFacts.TOTAL_WIDTH).orElse(0);
            int data = device.get(DeviceFacts.DATA_WIDTH).orElse(0);
            checkBits |= !isEmpty(device) && data > 0 && total == data + data / CHECK_BITS_PER_BYTE;
        }
    }

    private static boolean isEmpty(Structure device) {
        return device.get(DeviceFacts.SIZE).filter(ByteCount::isNothing).isPresent();
    }

    private static void array(Structure array, Sum sum, Problems problems) {
        array.get(ArrayFacts.LARGEST).filter(largest -> sum.size.compareTo(largest) > 0).ifPresent(largest ->
                problems.add(Problem.contradiction(array.name(),
                        "%s is installed, the array is said to take %s".formatted(sum.size, largest),
                        "no more than it takes")));
        array.get(ArrayFacts.DEVICES).filter(devices -> devices != sum.devices).ifPresent(devices ->
                problems.add(Problem.contradiction(array.name(),
                        "it counts %d devices, the table has %d".formatted(devices, sum.devices),
                        "one memory device for each slot")));
        if (sum.checkBits && array.get(ArrayFacts.CORRECTION).filter(ErrorCorrection.NONE::equals).isPresent()) {
            problems.add(Problem.contradiction(array.name(), "its modules have check bits and it corrects nothing",
                    "an array that uses them, or modules without"));
        }
    }

    private static void device(Structure device, Problems problems) {
        if (isEmpty(device)) {
            return;
        }
        int total = device.get(DeviceFacts.TOTAL_WIDTH).orElse(Integer.MAX_VALUE);
        int data = device.get(DeviceFacts.DATA_WIDTH).orElse(0);
        if (total < data) {
            problems.add(Problem.contradiction(device.name(), "%d bits in all, %d of them data".formatted(total, data),
                    "a total not below the data bits"));
        }
        int rate = device.get(DeviceFacts.RATE).orElse(Integer.MAX_VALUE);
        int configured = device.get(DeviceFacts.CONFIGURED_RATE).orElse(0);
        if (configured > rate) {
            problems.add(Problem.contradiction(device.name(),
                    "it runs at %d MT/s and is rated %d".formatted(configured, rate),
                    "no more than the rating, unless a profile is in use"));
        }
        FormFactor form = device.get(DeviceFacts.FORM).orElse(null);
        MemoryType type = device.get(DeviceFacts.TYPE).orElse(null);
        if (form == FormFactor.RIMM && type != null && !RAMBUS.contains(type)) {
            problems.add(Problem.contradiction(device.name(), "form RIMM with " + type.text(),
                    "RDRAM; firmware that means RDIMM often says RIMM"));
        }
    }

    private static void duplicates(List<Structure> devices, Problems problems) {
        Map<List<String>, Structure> seen = new HashMap<>();
        for (Structure device : devices) {
            List<String> name = List.of(device.get(DeviceFacts.LOCATOR).orElse(""),
                    device.get(DeviceFacts.BANK_LOCATOR).orElse(""));
            Structure other = seen.putIfAbsent(name, device);
            if (other != null && !Objects.equals(name, List.of("", ""))) {
                problems.add(Problem.contradiction(device.name(), "it has the same name as 0x%04X: %s".formatted(
                        other.handle(), String.join(" ", name).strip()), "a name of its own for each slot"));
            }
        }
    }
}
