package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slotledger.model.machine.Whereabouts;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;

/** Cuts the order of work of a plan into visits to rooms. */
public final class Round {

    private Round() {
    }

    /** The visits, in the order of work. */
    public static List<Stop> of(Plan plan) {
        List<Stop> stops = new ArrayList<>();
        Set<Whereabouts> seen = new HashSet<>();
        List<MachinePlan> visited = new ArrayList<>();
        for (MachinePlan machine : plan.work()) {
            if (!visited.isEmpty() && !where(visited).equals(machine.machine().where())) {
                stops.add(new Stop(where(visited), !seen.add(where(visited)), visited));
                visited.clear();
            }
            visited.add(machine);
        }
        if (!visited.isEmpty()) {
            stops.add(new Stop(where(visited), !seen.add(where(visited)), visited));
        }
        return List.copyOf(stops);
    }

    private static Whereabouts where(List<MachinePlan> machines) {
        return machines.get(0).machine().where();
    }
}
