package slotledger.planner.internal.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/**
 * Follows every module through the work, in the order of work. Of more modules pulled than are needed those are used
 * that lie on the bench for the shortest time.
 */
public final class Workshop {

    /** What is known of one opened machine; entering modules may be added after its turn. */
    private static final class Opened {
        private final int number;
        private final List<Unit> leaving = new ArrayList<>();
        private final Map<String, Unit> entering = new LinkedHashMap<>();

        private Opened(int number) {
            this.number = number;
        }
    }

    private final WorkTable table;
    private final Provision provision;
    private final Supplies supplies;
    private final int[] order;
    private final int[][] used;
    private final Tray[] trays;
    private final List<Deque<Station.InSlot>> debts = new ArrayList<>();
    private final Map<AssetTag, Opened> opened = new HashMap<>();
    private final List<Unit> rest = new ArrayList<>();
    private final Map<AssetTag, List<Move>> rings = new LinkedHashMap<>();

    /** Does all the work; the supplies are used up by it. */
    public Workshop(List<Opening> openings, Supplies supplies, boolean reusePulled) {
        this.table = new WorkTable(openings);
        this.provision = new Provision(table, supplies, reusePulled);
        this.supplies = supplies;
        this.order = new WorkOrder(table, provision).order();
        this.used = used(reusePulled);
        this.trays = new Tray[table.pieces().size()];
        for (int kind = 0; kind < trays.length; kind++) {
            trays[kind] = new Tray();
            debts.add(new ArrayDeque<>());
        }
        for (int opening : order) {
            work(opening);
        }
        if (debts.stream().anyMatch(waiting -> !waiting.isEmpty())) {
            throw new IllegalStateException("The modules of the plan must go up exactly.");
        }
    }

    /** How many of each that an opening gives are used further on: as many as later ones still wait for. */
    private int[][] used(boolean reusePulled) {
        int[][] counts = new int[order.length][];
        int[] wanted = new int[table.pieces().size()];
        for (int place = order.length - 1; place >= 0; place--) {
            int opening = order[place];
            Swap swap = table.swap(opening);
            counts[opening] = new int[swap.gives()];
            for (int j = 0; reusePulled && j < swap.gives(); j++) {
                counts[opening][j] = Math.min(wanted[swap.give(j)], swap.given(j));
                wanted[swap.give(j)] -= counts[opening][j];
            }
            for (int j = 0; j < swap.takes(); j++) {
                wanted[swap.take(j)] += provision.pulled(opening, j);
            }
        }
        return counts;
    }

    private void work(int number) {
        Opening opening = table.opening(number);
        Opened machine = new Opened(opened.size() + 1);
        opened.put(opening.tag(), machine);
        Swap swap = table.swap(number);
        opening.changes().in().keySet().forEach(slot -> machine.entering.put(slot, null));
        for (int j = 0; j < swap.takes(); j++) {
            Iterator<Unit> units = fetch(number, j).iterator();
            for (String slot : swap.takenTo(j)) {
                putIn(machine, new Station.InSlot(opening.tag(), slot), units.hasNext() ? units.next() : null,
                        swap.take(j));
            }
        }
        opening.changes().within().forEach((from, to) -> {
            Unit unit = new Unit(opening.before().in(from), new Station.InSlot(opening.tag(), from));
            unit.goesTo(new Station.InSlot(opening.tag(), to));
            machine.leaving.add(unit);
        });
        int[] left = used[number];
        opening.changes().out().forEach((slot, content) -> {
            Unit unit = new Unit(content, new Station.InSlot(opening.tag(), slot));
            machine.leaving.add(unit);
            putDown(number, unit, left);
        });
    }

    /** What is there for one kind an opening takes: bought ones, then the shelf, then pulled ones. */
    private List<Unit> fetch(int number, int take) {
        Opening opening = table.opening(number);
        int kind = table.swap(number).take(take);
        Piece piece = table.pieces().get(kind);
        SlotContent content = SlotContent.of(piece);
        List<Unit> units = new ArrayList<>();
        for (int count = provision.ordered(number, take); count > 0; count--) {
            units.add(new Unit(content, new Station.FromOrder(supplies.takeOrdered(piece, opening.centre()))));
        }
        for (int count = provision.shelf(number, take); count > 0; count--) {
            supplies.takeFromShelf(piece);
            units.add(new Unit(content, new Station.OnShelf()));
        }
        int room = table.room(number);
        for (int count = provision.pulled(number, take); count > 0; count--) {
            Unit unit = trays[kind].take(room, table.siteOf(room));
            if (unit != null) {
                units.add(unit);
            }
        }
        return units;
    }

    private void putIn(Opened machine, Station.InSlot slot, Unit unit, int kind) {
        machine.entering.put(slot.slot(), unit);
        if (unit == null) {
            debts.get(kind).add(slot);
        } else {
            unit.goesTo(slot);
        }
    }

    private void putDown(int number, Unit unit, int[] left) {
        Swap swap = table.swap(number);
        int give = swap.givenFrom(((Station.InSlot) unit.from()).slot());
        if (give >= 0 && left[give] > 0) {
            left[give]--;
            int room = table.room(number);
            trays[swap.give(give)].put(unit, room, table.siteOf(room));
            return;
        }
        Station.InSlot waiting = give < 0 ? null : debts.get(swap.give(give)).poll();
        if (waiting != null) {
            unit.goesTo(waiting);
            opened.get(waiting.machine()).entering.put(waiting.slot(), unit);
            rings.computeIfAbsent(waiting.machine(), unused -> new ArrayList<>()).add(unit.move());
            return;
        }
        rest.add(unit);
    }

    /** Pulled ones nobody needs; they have nowhere to go yet. */
    public List<Unit> rest() {
        return Collections.unmodifiableList(rest);
    }

    /** How many of each stay on the shelf. */
    public Map<Piece, Integer> shelf() {
        return supplies.rest();
    }

    /** Place in the order of work, 0 where the machine isn't opened. */
    public int number(AssetTag tag) {
        return opened.containsKey(tag) ? opened.get(tag).number : 0;
    }

    /** The moves of a machine: what leaves its slot first, then what comes from outside. */
    public List<Move> moves(AssetTag tag) {
        List<Move> moves = new ArrayList<>();
        if (opened.containsKey(tag)) {
            opened.get(tag).leaving.forEach(unit -> moves.add(unit.move()));
            opened.get(tag).entering.values().forEach(unit -> moves.add(unit.move()));
        }
        return moves;
    }

    /** Machines opened before a module they need is pulled, and how it comes at last. */
    public Map<AssetTag, List<Move>> rings() {
        return Collections.unmodifiableMap(rings);
    }
}
