package slotledger.planner.internal.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.plan.Plan;
import slotledger.planner.internal.choice.Options;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/** An earlier plan: of plans that are equal in all else, the one that changes the fewest machines of it. */
final class Earlier {

    private final Linear changes = new Linear();

    /** Adds for each population that was planned the machines that keep it. */
    Earlier(IntegerProgramme programme, Plan before, List<Options> options, int[][] machines) {
        Map<AssetTag, Population> planned = before.machines().stream().collect(Collectors.toMap(
                plan -> plan.machine().tag(), plan -> plan.after(), (one, other) -> one));
        for (int group = 0; group < machines.length; group++) {
            Map<Population, Integer> counts = counts(options.get(group), planned);
            for (int i = 0; i < machines[group].length && machines[group].length > 1 && !counts.isEmpty(); i++) {
                Integer count = counts.get(options.get(group).candidates().get(i).after());
                if (count != null) {
                    int kept = programme.variable("machines of class %d that keep population %d".formatted(group, i),
                            0, count);
                    programme.atMost("machines that keep a population",
                            new Linear().add(kept, 1).add(machines[group][i], -1), 0);
                    changes.add(kept, -1);
                }
            }
        }
    }

    private static Map<Population, Integer> counts(Options options, Map<AssetTag, Population> planned) {
        Map<Population, Integer> counts = new LinkedHashMap<>();
        for (Machine machine : options.group().machines()) {
            Population after = planned.get(machine.tag());
            if (after != null) {
                counts.merge(after, 1, Integer::sum);
            }
        }
        return counts;
    }

    /** The machines that keep their population, counted below zero. */
    Linear changes() {
        return changes;
    }
}
