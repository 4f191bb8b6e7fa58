package slotledger.planner.internal.order;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;

/** Pulled modules of one kind that lie ready; one of the same room is found first, then one of the same site. */
final class Tray {

    private final Map<Integer, Deque<Unit>> byRoom = new HashMap<>();
    private final Map<Integer, Deque<Unit>> bySite = new HashMap<>();
    private final Deque<Unit> all = new ArrayDeque<>();
    private int count;

    void put(Unit unit, int room, int site) {
        byRoom.computeIfAbsent(room, unused -> new ArrayDeque<>()).add(unit);
        bySite.computeIfAbsent(site, unused -> new ArrayDeque<>()).add(unit);
        all.add(unit);
        count++;
    }

    /** Takes the nearest one; null where none lies ready. */
    Unit take(int room, int site) {
        if (count == 0) {
            return null;
        }
        count--;
        Unit unit = poll(byRoom.get(room));
        unit = unit == null ? poll(bySite.get(site)) : unit;
        return unit == null ? poll(all) : unit;
    }

    private static Unit poll(Deque<Unit> units) {
        Unit unit = units == null ? null : units.poll();
        while (unit != null && !unit.take()) {
            unit = units.poll();
        }
        return unit;
    }
}
