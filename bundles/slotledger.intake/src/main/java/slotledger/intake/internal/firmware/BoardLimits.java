package slotledger.intake.internal.firmware;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.smbios.ArrayFacts;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.ErrorCorrection;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.model.module.ErrorCheck;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.unit.Capacity;

/**
 * What a table's arrays say of the board.
 *
 * @param largestTotal  of all arrays together; empty where one doesn't say, or says less than is installed
 * @param corrects      whether errors are said to be corrected; empty where it isn't told
 */
record BoardLimits(Optional<Capacity> largestTotal, Optional<Boolean> corrects) {

    private static final int STEP_BITS = 10;
    /** A machine that holds more times its limit than this has a limit in the wrong unit. */
    private static final int MOST_BEYOND = 64;

    static BoardLimits of(SmbiosTable table, List<ObservedSlot> slots, Lies lies) {
        checks(slots, corrects(table), lies);
        counts(table, lies);
        return new BoardLimits(largest(table, slots, lies), corrects(table));
    }

    private static void counts(SmbiosTable table, Lies lies) {
        for (Structure array : table.memoryArrays()) {
            long listed = table.memoryDevices().stream()
                    .filter(device -> device.get(DeviceFacts.ARRAY).map(handle -> handle == array.handle())
                            .orElse(table.memoryArrays().size() == 1)).count();
            array.get(ArrayFacts.DEVICES).filter(count -> count != listed).ifPresent(count -> lies.add(Lie.COUNT,
                    "%d counted, %d listed".formatted(count, listed)));
        }
    }

    private static Optional<Boolean> corrects(SmbiosTable table) {
        List<ErrorCorrection> told = table.memoryArrays().stream()
                .map(array -> array.get(ArrayFacts.CORRECTION)).flatMap(Optional::stream)
                .filter(each -> each != ErrorCorrection.OTHER).toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(told.stream().anyMatch(each -> each != ErrorCorrection.NONE));
    }

    private static void checks(List<ObservedSlot> slots, Optional<Boolean> corrects, Lies lies) {
        List<String> with = names(slots, ErrorCheck.ECC);
        List<String> without = names(slots, ErrorCheck.NONE);
        if (!with.isEmpty() && !without.isEmpty()) {
            lies.add(Lie.MIXED_CHECKS, "with " + String.join(", ", with) + "; without " + String.join(", ", without));
        }
        if (!with.isEmpty() && corrects.equals(Optional.of(false))) {
            lies.add(Lie.CHECKS_UNUSED, String.join(", ", with));
        }
        boolean holdsAny = slots.stream().anyMatch(slot -> slot.content().module().isPresent());
        if (with.isEmpty() && holdsAny && corrects.equals(Optional.of(true))) {
            lies.add(Lie.CHECKS_MISSING, String.join(", ", without));
        }
    }

    private static List<String> names(List<ObservedSlot> slots, ErrorCheck check) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < slots.size(); i++) {
            if (DeviceReader.check(slots.get(i).content()).filter(check::equals).isPresent()) {
                names.add(slots.get(i).label().orElse("slot " + (i + 1)));
            }
        }
        return names;
    }

    private static Optional<Capacity> largest(SmbiosTable table, List<ObservedSlot> slots, Lies lies) {
        List<Structure> arrays = table.memoryArrays();
        List<ByteCount> told = arrays.stream().map(array -> array.get(ArrayFacts.LARGEST)).flatMap(Optional::stream)
                .toList();
        if (arrays.isEmpty() || told.size() < arrays.size()) {
            return Optional.empty();
        }
        Capacity sum = Capacity.ofKiB(told.stream().reduce(ByteCount.NOTHING, ByteCount::plus).bytes() >> STEP_BITS);
        Capacity installed = slots.stream().map(slot -> slot.content().capacity())
                .reduce(Capacity.NONE, Capacity::plus);
        if (sum.isNone()) {
            return Optional.empty();
        }
        if (sum.atLeast(installed)) {
            return Optional.of(sum);
        }
        boolean wrongUnit = sum.kibibytes() <= Long.MAX_VALUE >> STEP_BITS
                && installed.kibibytes() / sum.kibibytes() > MOST_BEYOND
                && Capacity.ofKiB(sum.kibibytes() << STEP_BITS).atLeast(installed);
        lies.add(wrongUnit ? Lie.LIMIT_UNIT : Lie.LIMIT, "%s installed, at most %s".formatted(installed, sum));
        return wrongUnit ? Optional.of(Capacity.ofKiB(sum.kibibytes() << STEP_BITS)) : Optional.empty();
    }
}
