package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Whereabouts;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;

/**
 * Puts the work into walking order: site by site, room by room, and a machine only after all machines it gets modules
 * from. Places that can be finished in one visit come first; a room is visited again only where it can't be otherwise.
 */
public final class Round {

    private final Map<Whereabouts, List<MachinePlan>> waiting = new TreeMap<>();
    private final Map<AssetTag, Set<AssetTag>> donors = new LinkedHashMap<>();
    private final Set<AssetTag> done = new HashSet<>();
    private final List<Stop> stops = new ArrayList<>();
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
        while (!waiting.isEmpty()) {
            String site = next(waiting.keySet().stream().map(Whereabouts::site).distinct().toList(),
                    this::rooms);
            int before = done.size();
            for (List<Whereabouts> rooms = rooms(site); !rooms.isEmpty(); rooms = rooms(site)) {
                Whereabouts room = next(rooms, List::of);
                List<MachinePlan> machines = ready(List.of(room));
                if (machines.isEmpty()) {
                    break;
                }
                add(room, machines);
            }
            if (done.size() == before) {
                MachinePlan first = firstWaiting();
                add(first.machine().where(), List.of(first));
            }
        }
        return List.copyOf(stops);
    }

    private List<Whereabouts> rooms(String site) {
        return waiting.keySet().stream().filter(where -> where.site().equals(site)).toList();
    }

    /** The first place that can be finished now; else the first where something can be done; else the first. */
    private <P> P next(List<P> places, Function<P, List<Whereabouts>> roomsOf) {
        Predicate<P> some = place -> !ready(roomsOf.apply(place)).isEmpty();
        Predicate<P> all = place -> ready(roomsOf.apply(place)).size()
                == roomsOf.apply(place).stream().mapToInt(room -> waiting.get(room).size()).sum();
        return places.stream().filter(all).findFirst()
                .or(() -> places.stream().filter(some).findFirst())
                .orElse(places.get(0));
    }

    /** Everything in some rooms that can be done now, one after the other. */
    private List<MachinePlan> ready(List<Whereabouts> rooms) {
        List<MachinePlan> visited = new ArrayList<>();
        Set<AssetTag> finished = new HashSet<>(done);
        boolean more = true;
        while (more) {
            more = false;
            for (Whereabouts room : rooms) {
                for (MachinePlan machine : waiting.get(room)) {
                    AssetTag tag = machine.machine().tag();
                    if (!finished.contains(tag) && isReady(tag, finished)) {
                        finished.add(tag);
                        visited.add(machine);
                        more = true;
                    }
                }
            }
        }
        return visited;
    }

    private boolean isReady(AssetTag tag, Set<AssetTag> finished) {
        // A donor nobody opens can't be waited for.
        return donors.get(tag).stream().allMatch(donor -> finished.contains(donor) || !donors.containsKey(donor));
    }

    private void add(Whereabouts where, List<MachinePlan> machines) {
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
