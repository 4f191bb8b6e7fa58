package slotledger.model.difference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.observed.ObservedMachine;

/** Compares two inventories, machine by machine, in the order of the earlier one. */
final class FleetTerms {

    private final Terms terms = new Terms();

    private FleetTerms() {
    }

    static List<Term> of(List<ObservedMachine> before, List<ObservedMachine> after) {
        FleetTerms fleet = new FleetTerms();
        Map<AssetTag, ObservedMachine> then = byTag(before);
        Map<AssetTag, ObservedMachine> now = byTag(after);
        then.forEach((tag, machine) -> {
            if (now.containsKey(tag)) {
                fleet.compare(machine, now.get(tag));
            } else {
                fleet.terms.compare("machine " + tag, (Object) text(machine), Terms.NONE);
            }
        });
        now.forEach((tag, machine) -> {
            if (!then.containsKey(tag)) {
                fleet.terms.compare("machine " + tag, (Object) Terms.NONE, text(machine));
            }
        });
        return fleet.terms.list();
    }

    private static Map<AssetTag, ObservedMachine> byTag(List<ObservedMachine> machines) {
        Map<AssetTag, ObservedMachine> byTag = new LinkedHashMap<>();
        machines.forEach(machine -> byTag.putIfAbsent(machine.tag(), machine));
        return byTag;
    }

    private void compare(ObservedMachine then, ObservedMachine now) {
        String of = " of " + then.tag();
        fact("serial number" + of, then.serial(), now.serial());
        fact("maker" + of, then.maker(), now.maker());
        fact("model" + of, then.model(), now.model());
        fact("place" + of, then.where().toString(), now.where().toString());
        fact("cost centre" + of, then.costCentre(), now.costCentre());
        fact("role" + of, then.role(), now.role());
        fact("operating system" + of, then.operatingSystem(), now.operatingSystem());
        fact("processor" + of, then.processor(), now.processor());
        fact("processors" + of, Terms.text(then.processors()), Terms.text(now.processors()));
        fact("memory mode" + of, then.redundancy(), now.redundancy());
        fact("number of slots" + of, Terms.text(then.slotCount()), Terms.text(now.slotCount()));
        fact("total memory" + of, Terms.text(then.total()), Terms.text(now.total()));
        fact("slots" + of, slots(then), slots(now));
    }

    private void fact(String what, String before, String after) {
        terms.compare(what, (Object) (before.isEmpty() ? Terms.NONE : before),
                after.isEmpty() ? Terms.NONE : after);
    }

    private static String text(ObservedMachine machine) {
        String where = machine.where().toString();
        return (machine.maker() + " " + machine.model()).strip() + (where.isEmpty() ? "" : ", " + where)
                + (machine.role().isEmpty() ? "" : ", " + machine.role());
    }

    private static String slots(ObservedMachine machine) {
        return machine.slots().stream().map(slot -> (slot.label().orElse("") + " " + slot.content()).strip())
                .collect(Collectors.joining(", "));
    }
}
