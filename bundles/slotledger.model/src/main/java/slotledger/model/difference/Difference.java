package slotledger.model.difference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;

/**
 * What is different between an earlier plan and a later one.
 *
 * @param before   the earlier plan
 * @param after    the later plan
 * @param terms    what was wanted, allowed or decided differently
 * @param lines    purchase lines added, dropped or changed, those of the earlier order first
 * @param machines machines that end with other modules, or on target in only one of the plans, or that are in only one
 *                 of them; in the order of the later inventory
 */
public record Difference(
        Plan before, Plan after, List<Term> terms, List<LineChange> lines, List<MachineChange> machines) {

    public Difference {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        terms = List.copyOf(terms);
        lines = List.copyOf(lines);
        machines = List.copyOf(machines);
    }

    /**
     * Compares two plans.
     *
     * @throws IllegalArgumentException where they count in different currencies
     */
    public static Difference of(Plan before, Plan after) {
        if (!isComparable(before, after)) {
            throw new IllegalArgumentException("The plans to compare must count in one currency, not in %s and %s."
                    .formatted(before.policy().currency(), after.policy().currency()));
        }
        List<LineChange> lines = lines(before, after);
        return new Difference(before, after, Terms.of(before, after), lines, machines(before, after, lines));
    }

    /** Whether both count in one currency. */
    public static boolean isComparable(Plan before, Plan after) {
        return before.policy().currency().equals(after.policy().currency());
    }

    /** Whether the same is bought and done, whatever was wanted. */
    public boolean isNone() {
        return lines.isEmpty() && machines.isEmpty() && before.spending().equals(after.spending());
    }

    /** Machines that are on target after the work. */
    public static long onTarget(Plan plan) {
        return plan.machines().stream().filter(MachineChange::isOnTarget).count();
    }

    private static List<LineChange> lines(Plan before, Plan after) {
        Map<String, Purchase> later = new LinkedHashMap<>();
        after.purchases().forEach(line -> later.put(line.offer().id(), line));
        List<LineChange> lines = new ArrayList<>();
        for (Purchase line : before.purchases()) {
            Optional<Purchase> now = Optional.ofNullable(later.remove(line.offer().id()));
            if (now.filter(same -> same.packs() == line.packs() && same.total().equals(line.total())).isEmpty()) {
                lines.add(new LineChange(Optional.of(line), now));
            }
        }
        later.values().forEach(line -> lines.add(new LineChange(Optional.empty(), Optional.of(line))));
        return lines;
    }

    private static List<MachineChange> machines(Plan before, Plan after, List<LineChange> lines) {
        Map<AssetTag, MachinePlan> earlier = new LinkedHashMap<>();
        before.machines().forEach(machine -> earlier.put(machine.machine().tag(), machine));
        Whys whys = new Whys(before, after, lines);
        List<MachineChange> changes = new ArrayList<>();
        for (MachinePlan now : after.machines()) {
            Optional<MachinePlan> then = Optional.ofNullable(earlier.remove(now.machine().tag()));
            if (then.isEmpty() || !then.get().after().equals(now.after())
                    || MachineChange.isOnTarget(then.get()) != MachineChange.isOnTarget(now)) {
                changes.add(new MachineChange(then, Optional.of(now), whys.why(then, Optional.of(now))));
            }
        }
        earlier.values().forEach(then -> changes.add(new MachineChange(
                Optional.of(then), Optional.empty(), whys.why(Optional.of(then), Optional.empty()))));
        return changes;
    }
}
