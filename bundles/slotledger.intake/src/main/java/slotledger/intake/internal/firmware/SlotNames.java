package slotledger.intake.internal.firmware;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.Structure;

/** Names slots: by the locator where each has one of its own, else with the bank's name, else not at all. */
final class SlotNames {

    private SlotNames() {
    }

    /** One name a device, in their order; none where nobody can tell them apart. */
    static List<Optional<String>> of(List<Structure> devices, Lies lies) {
        List<Optional<String>> locators = names(devices, device -> device.get(DeviceFacts.LOCATOR));
        if (isTold(locators) && isUnique(locators)) {
            return locators;
        }
        List<Optional<String>> joined = names(devices, SlotNames::joined);
        if (isTold(joined) && isUnique(joined)) {
            lies.add(Lie.SAME_NAME, twice(locators));
            return joined;
        }
        lies.add(isTold(locators) ? Lie.SAME_NAMES : Lie.NAMELESS, twice(locators));
        return devices.stream().map(device -> Optional.<String>empty()).toList();
    }

    private static Optional<String> joined(Structure device) {
        Optional<String> bank = device.get(DeviceFacts.BANK_LOCATOR);
        Optional<String> locator = device.get(DeviceFacts.LOCATOR);
        return bank.isPresent() && locator.isPresent() ? Optional.of(bank.get() + " " + locator.get()) : bank;
    }

    private static List<Optional<String>> names(List<Structure> devices, Function<Structure, Optional<String>> name) {
        return devices.stream().map(name).toList();
    }

    private static boolean isTold(List<Optional<String>> names) {
        return names.stream().allMatch(Optional::isPresent);
    }

    private static boolean isUnique(List<Optional<String>> names) {
        return names.stream().distinct().count() == names.size();
    }

    /** "DIMM 4 times": the names that several slots have. */
    private static String twice(List<Optional<String>> names) {
        Map<String, Integer> counts = new HashMap<>();
        names.forEach(name -> counts.merge(name.orElse("no name"), 1, Integer::sum));
        return String.join(", ", counts.entrySet().stream().filter(entry -> entry.getValue() > 1)
                .map(entry -> "%s %d times".formatted(entry.getKey(), entry.getValue())).sorted().toList());
    }
}
