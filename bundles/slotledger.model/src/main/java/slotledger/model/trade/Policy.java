package slotledger.model.trade;

import java.util.Collections;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.machine.Machine;
import slotledger.model.unit.Money;

/**
 * What the owner of the fleet wants and allows.
 *
 * @param currency          currency of budgets, labour and plans
 * @param targets           by role; a role without one is left as it is unless there is a target for any role ("*")
 * @param budget            most that may be spent on goods and delivery in all, with tax only where the policy says so;
 *                          empty means no limit
 * @param costCentreBudgets most for each cost centre, in file order
 * @param perMachine        labour for opening one machine
 * @param perModule         labour for handling one module
 * @param sparePercent      spare modules a kind bought, in percent, rounded up
 * @param atLeastOneSpare   at least one spare of each kind bought, whatever the percentage
 * @param reusePulled       whether modules pulled from machines may be used again
 * @param harvest           whether machines above their target may be opened for their modules
 * @param leaveAlone        machines nobody touches
 * @param buying            which offers may be used, and how their prices count
 * @param waves             several times of work, the first first; empty means that all is done at once
 */
public record Policy(
        Currency currency,
        List<Target> targets,
        Optional<Money> budget,
        Map<String, Money> costCentreBudgets,
        Money perMachine,
        Money perModule,
        int sparePercent,
        boolean atLeastOneSpare,
        boolean reusePulled,
        boolean harvest,
        LeaveAlone leaveAlone,
        Buying buying,
        List<Wave> waves) {

    private static final String ANY_ROLE = "*";
    private static final long HUNDRED = 100;

    /** A policy that uses offers as they are, and does all at once. */
    public Policy(
            Currency currency,
            List<Target> targets,
            Optional<Money> budget,
            Map<String, Money> costCentreBudgets,
            Money perMachine,
            Money perModule,
            int sparePercent,
            boolean atLeastOneSpare,
            boolean reusePulled,
            boolean harvest,
            LeaveAlone leaveAlone) {
        this(currency, targets, budget, costCentreBudgets, perMachine, perModule, sparePercent, atLeastOneSpare,
                reusePulled, harvest, leaveAlone, Buying.PLAIN, List.of());
    }

    public Policy {
        Objects.requireNonNull(currency, "currency");
        targets = List.copyOf(targets);
        Objects.requireNonNull(budget, "budget");
        costCentreBudgets = Collections.unmodifiableMap(new LinkedHashMap<>(costCentreBudgets));
        Objects.requireNonNull(perMachine, "perMachine");
        Objects.requireNonNull(perModule, "perModule");
        Objects.requireNonNull(leaveAlone, "leaveAlone");
        Objects.requireNonNull(buying, "buying");
        waves = List.copyOf(waves);
        if (sparePercent < 0 || sparePercent > 100) {
            throw new IllegalArgumentException("The spares (%d %%) must be from 0 to 100.".formatted(sparePercent));
        }
        if (targets.stream().map(target -> key(target.role())).distinct().count() != targets.size()) {
            throw new IllegalArgumentException("A role must not have two targets.");
        }
        for (int i = 1; i < waves.size(); i++) {
            if (!waves.get(i).date().isAfter(waves.get(i - 1).date())) {
                throw new IllegalArgumentException("The wave %s must come after the one before it."
                        .formatted(waves.get(i).name()));
            }
        }
    }

    /** The policy of one of its waves alone. */
    public Policy of(Wave wave) {
        return new Policy(currency, targets, wave.budget(), wave.costCentreBudgets(), perMachine, perModule,
                sparePercent, atLeastOneSpare, reusePulled, harvest, leaveAlone, buying.arrivingBy(wave.neededBy()),
                List.of());
    }

    /** The same policy with other ways to buy. */
    public Policy with(Buying other) {
        return new Policy(currency, targets, budget, costCentreBudgets, perMachine, perModule, sparePercent,
                atLeastOneSpare, reusePulled, harvest, leaveAlone, other, waves);
    }

    /** Spares that go with so many modules of one kind, bought and used: the percentage of them, rounded up. */
    public int spares(int used) {
        int share = Math.toIntExact(-Math.floorDiv(-(long) used * sparePercent, HUNDRED));
        return used > 0 && atLeastOneSpare ? Math.max(1, share) : share;
    }

    /** The same with another budget in all. */
    public Policy withBudget(Optional<Money> most) {
        return new Policy(currency, targets, most, costCentreBudgets, perMachine, perModule, sparePercent,
                atLeastOneSpare, reusePulled, harvest, leaveAlone, buying, waves);
    }

    /** The target of a role, or that of any role; empty where the role is to be left as it is. */
    public Optional<Target> target(String role) {
        return find(role).or(() -> find(ANY_ROLE));
    }

    private Optional<Target> find(String role) {
        return targets.stream().filter(target -> key(target.role()).equals(key(role))).findFirst();
    }

    private static String key(String role) {
        return role.strip().toLowerCase(Locale.ROOT);
    }

    /**
     * Which machines nobody touches; texts as the inventory writes them, without regard to case.
     *
     * @param tags  asset tags
     * @param rooms rooms, "site / room" or room alone
     * @param roles roles
     */
    public record LeaveAlone(Set<String> tags, Set<String> rooms, Set<String> roles) {

        public static final LeaveAlone NONE = new LeaveAlone(Set.of(), Set.of(), Set.of());

        public LeaveAlone {
            tags = keys(tags);
            rooms = keys(rooms);
            roles = keys(roles);
        }

        public boolean covers(Machine machine) {
            return tags.contains(key(machine.tag().value()))
                    || rooms.contains(key(machine.where().room()))
                    || rooms.contains(key(machine.where().toString()))
                    || roles.contains(key(machine.role()));
        }

        private static Set<String> keys(Set<String> texts) {
            return texts.stream().map(Policy::key).collect(Collectors.toUnmodifiableSet());
        }
    }
}
