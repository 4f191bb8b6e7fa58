package slotledger.model.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.unit.Money;

/**
 * What one plan does otherwise than another.
 *
 * @param before   the plan compared with
 * @param after    the plan asked about
 * @param machines those that end otherwise, or are in one of the plans only; in the order of the later plan
 * @param lines    order lines that are added, gone, or of another number of packs or price
 */
public record PlanDifference(Plan before, Plan after, List<MachineChange> machines, List<LineChange> lines) {

    /**
     * A machine that ends otherwise.
     *
     * @param machine which machine
     * @param before  how the one plan leaves it; empty where it doesn't know the machine
     * @param after   how the other plan leaves it; empty where it doesn't know the machine
     */
    public record MachineChange(AssetTag machine, Optional<MachinePlan> before, Optional<MachinePlan> after) {
        public MachineChange {
            Objects.requireNonNull(machine, "machine");
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
        }

        /** The plan of the machine that is there, the later one first. */
        public MachinePlan known() {
            return after.or(() -> before).orElseThrow();
        }
    }

    /**
     * An order line that is not the same.
     *
     * @param offer  id of the offer
     * @param before the line in the one plan; empty where nothing is bought of the offer
     * @param after  the line in the other plan; empty where nothing is bought of the offer
     */
    public record LineChange(String offer, Optional<Purchase> before, Optional<Purchase> after) {
        public LineChange {
            Objects.requireNonNull(offer, "offer");
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
        }

        /** The line that is there, the later one first. */
        public Purchase known() {
            return after.or(() -> before).orElseThrow();
        }

        public int packsBefore() {
            return before.map(Purchase::packs).orElse(0);
        }

        public int packsAfter() {
            return after.map(Purchase::packs).orElse(0);
        }

        public Money totalBefore() {
            return before.map(Purchase::total).orElse(Money.zero(known().total().currency()));
        }

        public Money totalAfter() {
            return after.map(Purchase::total).orElse(Money.zero(known().total().currency()));
        }
    }

    public PlanDifference {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        machines = List.copyOf(machines);
        lines = List.copyOf(lines);
    }

    /**
     * Compares two plans.
     *
     * @throws IllegalArgumentException where they count in different currencies
     */
    public static PlanDifference between(Plan before, Plan after) {
        if (!before.policy().currency().equals(after.policy().currency())) {
            throw new IllegalArgumentException("The plans (%s and %s) must count in one currency.".formatted(
                    before.policy().currency(), after.policy().currency()));
        }
        return new PlanDifference(before, after, machines(before, after), lines(before, after));
    }

    private static List<MachineChange> machines(Plan before, Plan after) {
        Map<AssetTag, MachinePlan> old = byKey(before.machines(), plan -> plan.machine().tag());
        Map<AssetTag, MachinePlan> fresh = byKey(after.machines(), plan -> plan.machine().tag());
        List<MachineChange> changes = new ArrayList<>();
        for (AssetTag tag : keys(fresh, old)) {
            Optional<Population> was = Optional.ofNullable(old.get(tag)).map(MachinePlan::after);
            Optional<Population> is = Optional.ofNullable(fresh.get(tag)).map(MachinePlan::after);
            if (!was.equals(is)) {
                changes.add(new MachineChange(
                        tag, Optional.ofNullable(old.get(tag)), Optional.ofNullable(fresh.get(tag))));
            }
        }
        return changes;
    }

    private static List<LineChange> lines(Plan before, Plan after) {
        Map<String, Purchase> old = byKey(before.purchases(), line -> line.offer().id());
        Map<String, Purchase> fresh = byKey(after.purchases(), line -> line.offer().id());
        return keys(fresh, old).stream()
                .sorted()
                .map(id -> new LineChange(
                        id, Optional.ofNullable(old.get(id)), Optional.ofNullable(fresh.get(id))))
                .filter(line -> line.packsBefore() != line.packsAfter()
                        || !line.totalBefore().equals(line.totalAfter()))
                .toList();
    }

    private static <K, V> Map<K, V> byKey(List<V> values, Function<V, K> key) {
        return values.stream().collect(Collectors.toMap(key, each -> each, (one, other) -> one, LinkedHashMap::new));
    }

    private static <K> Set<K> keys(Map<K, ?> one, Map<K, ?> other) {
        Set<K> keys = new LinkedHashSet<>(one.keySet());
        keys.addAll(other.keySet());
        return keys;
    }

    public boolean isNone() {
        return machines.isEmpty() && lines.isEmpty();
    }

    /** Machines of a plan that have a target and reach it after the work. */
    public static long onTarget(Plan plan) {
        return plan.machines().stream()
                .filter(machine -> machine.target().isPresent() && machine.obstacle().isEmpty())
                .count();
    }
}
