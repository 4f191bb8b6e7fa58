package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.Piece;
import slotledger.planner.PlanRequest;

/** What people decided, by its meaning alone. Shares no code with the search of the planner. */
final class BruteForceChoices {

    /** These ends must never be. */
    static final int NEVER = -1;

    private final PlanRequest request;
    private final Map<String, List<Machine>> rooms = new LinkedHashMap<>();
    private final Set<Machine> settled = new HashSet<>();
    private final Set<String> apart = new HashSet<>();
    private final Map<Machine, Boolean> onTarget = new HashMap<>();

    BruteForceChoices(PlanRequest request) {
        this.request = request;
        for (Machine machine : request.fleet().machines()) {
            if (isNamed(machine)) {
                rooms.computeIfAbsent(machine.where() + " " + machine.board(), unused -> new ArrayList<>())
                        .add(machine);
            }
        }
    }

    boolean isNamed(Machine machine) {
        return request.choices().uniformRoom(machine).isPresent()
                && request.policy().target(machine.role()).isPresent()
                && !request.policy().leaveAlone().covers(machine);
    }

    Optional<Population> pinned(Machine machine) {
        return request.choices().pin(machine.tag()).map(pin -> pin.applied(machine.population()));
    }

    /** Rooms in which all is well already. */
    void find(BiPredicate<Machine, Population> isOnTarget) {
        for (List<Machine> room : rooms.values()) {
            boolean isAlike = room.stream().map(machine -> contents(machine.population())).distinct().count() == 1;
            if (isAlike && room.stream().allMatch(each -> isOnTarget.test(each, each.population())
                    && pinned(each).isEmpty())) {
                settled.addAll(room);
            }
        }
    }

    private boolean harvests() {
        return request.policy().harvest() && request.policy().reusePulled();
    }

    /** Whether a machine may end so by itself, before its room is looked at. */
    boolean mayEnd(Machine machine, Population after, boolean isOnTargetNow) {
        Map<Piece, Integer> more = contents(after);
        contents(machine.population()).forEach((piece, count) -> more.merge(piece, -count, Integer::sum));
        if (more.entrySet().stream().anyMatch(each -> each.getValue() > 0 && request.choices()
                .forbids(each.getKey()))) {
            return false;
        }
        if (pinned(machine).isPresent()) {
            return pinned(machine).get().equals(after);
        }
        if (after.equals(machine.population())) {
            return true;
        }
        onTarget.put(machine, isOnTargetNow);
        return !isNamed(machine) || !isOnTargetNow || harvests() || !settled.contains(machine)
                && after.total().compareTo(machine.population().total()) >= 0;
    }

    /** Finds what all machines of each room can end with. */
    void share(Function<Machine, List<Population>> ends) {
        rooms.forEach((name, machines) -> {
            Set<Map<Piece, Integer>> shared = null;
            for (Machine machine : machines) {
                Set<Map<Piece, Integer>> own = new HashSet<>();
                ends.apply(machine).forEach(after -> own.add(contents(after)));
                if (shared == null) {
                    shared = own;
                } else {
                    shared.retainAll(own);
                }
            }
            if (shared.isEmpty()) {
                apart.add(name);
            }
        });
    }

    /** Where a room has nothing in common, machines on target stay closed as everywhere. */
    boolean mayEndAlone(Machine machine, Population after) {
        boolean isApart = isNamed(machine) && apart.contains(machine.where() + " " + machine.board());
        return !isApart || pinned(machine).isPresent() || harvests() || after.equals(machine.population())
                || !onTarget.getOrDefault(machine, false);
    }

    /** How many rooms are left as they are and mixed; {@link #NEVER} where somebody's decision is not kept. */
    int mixed(List<Population> ends) {
        List<Machine> machines = request.fleet().machines();
        int opened = 0;
        for (int i = 0; i < machines.size(); i++) {
            opened += ends.get(i).equals(machines.get(i).population()) ? 0 : 1;
        }
        if (request.choices().mostOpened().isPresent() && opened > request.choices().mostOpened().getAsInt()) {
            return NEVER;
        }
        int mixed = 0;
        for (Map.Entry<String, List<Machine>> room : rooms.entrySet()) {
            if (apart.contains(room.getKey())) {
                continue;
            }
            Set<Map<Piece, Integer>> held = new HashSet<>();
            boolean stays = true;
            for (Machine machine : room.getValue()) {
                Population end = ends.get(machines.indexOf(machine));
                held.add(contents(end));
                stays &= pinned(machine).isPresent() || contents(end).equals(contents(machine.population()));
            }
            if (held.size() > 1 && !stays) {
                return NEVER;
            }
            mixed += held.size() > 1 ? 1 : 0;
        }
        return mixed;
    }

    private static Map<Piece, Integer> contents(Population population) {
        Map<Piece, Integer> contents = new HashMap<>();
        population.pieces().forEach(piece -> contents.merge(piece, 1, Integer::sum));
        return contents;
    }
}
