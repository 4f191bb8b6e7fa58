package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Whereabouts;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;

/**
 * Puts the work into walking order: room by room, and a machine only after all machines it gets modules from. A room is
 * visited again only where a module comes from a room that is later on the way.
 */
public final class Round {

    private final Map<Whereabouts, List<MachinePlan>> waiting = new TreeMap<>();
    private final Map<AssetTag, Set<AssetTag>> donors = new LinkedHashMap<>();
    private final Set<AssetTag> done = new HashSet<>();
    private final Set<Whereabouts> seen = new HashSet<>();

    private Round(Plan plan) {
        for (MachinePlan machine : plan.work()) {
            waiting.computeIfAbsent(machine.machine().where(), where -> new ArrayList<>()).add(machine);
            donors.put(machine.machine().tag(), donorsOf(machine));
        }
    }

    public static List<Stop> of(Plan plan) {
        return new Round(plan).stops();
    }

    private static Set<AssetTag> donorsOf(MachinePlan plan) {
        Set<AssetTag> found = new HashSet<>();
        for (Move move : plan.moves()) {
            if (move.from() instanceof Station.InSlot from && !from.machine().equals(plan.machine().tag())) {
                found.add(from.machine());
            }
        }
        return found;
    }

    private List<Stop> stops() {
        List<Stop> stops = new ArrayList<>();
        while (!waiting.isEmpty()) {
            int before = done.size();
            for (Whereabouts where : List.copyOf(waiting.keySet())) {
                add(stops, where, visit(where));
            }
            if (done.size() == before) {
                MachinePlan first = firstWaiting();
                add(stops, first.machine().where(), List.of(first));
            }
        }
        return List.copyOf(stops);
    }

    /** Everything in a room that can be done now. */
    private List<MachinePlan> visit(Whereabouts where) {
        List<MachinePlan> visited = new ArrayList<>();
        boolean more = true;
        Set<AssetTag> now = new HashSet<>(done);
        while (more) {
            more = false;
            for (MachinePlan machine : waiting.get(where)) {
                AssetTag tag = machine.machine().tag();
                if (!now.contains(tag) && isReady(tag, now)) {
                    now.add(tag);
                    visited.add(machine);
                    more = true;
                }
            }
        }
        return visited;
    }

    private boolean isReady(AssetTag tag, Set<AssetTag> finished) {
        // A donor nobody opens can't be waited for.
        return donors.get(tag).stream().allMatch(donor -> finished.contains(donor) || !donors.containsKey(donor));
    }

    private void add(List<Stop> stops, Whereabouts where, List<MachinePlan> machines) {
        if (machines.isEmpty()) {
            return;
        }
        stops.add(new Stop(where, !seen.add(where), machines));
        machines.forEach(machine -> done.add(machine.machine().tag()));
        waiting.get(where).removeAll(machines);
        if (waiting.get(where).isEmpty()) {
            waiting.remove(where);
        }
    }

    /** Machines that wait for one another: the order of work says where to begin. */
    private MachinePlan firstWaiting() {
        return waiting.values().stream()
                .flatMap(List::stream)
                .min((one, other) -> Integer.compare(one.workOrder(), other.workOrder()))
                .orElseThrow();
    }
}
