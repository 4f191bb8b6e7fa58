package slotledger.planner.internal.work;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.order.SlotChanges;

/**
 * What some machines of a class get; one object for all of them.
 *
 * @param options   what could be done with machines like them
 * @param candidate what is done with them
 * @param changes   the moves in the slots of each
 */
public record Assignment(Options options, Candidate candidate, SlotChanges changes) {

    public Assignment {
        Objects.requireNonNull(options, "options");
        Objects.requireNonNull(candidate, "candidate");
        if (changes.touches() != candidate.touches()) {
            throw new IllegalStateException("The moves (%d) in machine %s must be as many as planned (%d)."
                    .formatted(changes.touches(), options.group().machines().get(0).tag(), candidate.touches()));
        }
    }

    static Assignment of(Options options, int candidate) {
        Candidate chosen = options.candidates().get(candidate);
        return new Assignment(options, chosen, SlotChanges.of(options.group().now(), chosen.after()));
    }

    /**
     * Gives each machine of each class its population: what an earlier plan gave it, where some get that; then opened
     * ones first, in the order of asset tags.
     *
     * @param numbers place of each machine in the fleet
     * @return by place in the fleet
     */
    static Assignment[] assign(Choice choice, Optional<Plan> before, Map<AssetTag, Integer> numbers) {
        Assignment[] all = new Assignment[numbers.size()];
        ToIntFunction<Machine> place = machine -> numbers.get(machine.tag());
        Optional<Map<AssetTag, Population>> planned = before.map(plan -> plan.machines().stream()
                .collect(Collectors.toMap(each -> each.machine().tag(), MachinePlan::after, (one, other) -> one)));
        for (int group = 0; group < choice.options().size(); group++) {
            if (planned.isPresent()) {
                new Earlier(choice, group, planned.get()).give(place, all);
            } else {
                assign(choice, group, place, all);
            }
        }
        if (Arrays.asList(all).contains(null)) {
            throw new IllegalStateException("Every machine of the fleet must be in a class.");
        }
        return all;
    }

    private static void assign(Choice choice, int group, ToIntFunction<Machine> place, Assignment[] all) {
        Options options = choice.options().get(group);
        int next = 0;
        for (int i = 1; i <= options.candidates().size(); i++) {
            int number = i % options.candidates().size();
            int count = choice.count(group, number);
            Assignment assignment = count == 0 ? null : of(options, number);
            for (; count > 0; count--) {
                all[place.applyAsInt(options.group().machines().get(next++))] = assignment;
            }
        }
    }

    boolean isOpened() {
        return candidate.opens();
    }
}
