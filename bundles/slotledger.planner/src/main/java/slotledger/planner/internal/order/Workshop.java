package slotledger.planner.internal.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.module.Piece;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/**
 * Follows every module through the work, in the order of work. Of more modules pulled than are needed those are used
 * that lie on the bench for the shortest time.
 */
public final class Workshop {

    /** A slot that something is put into only after its machine's turn. */
    private record Debt(int opening, int entry) {
    }

    private final WorkTable table;
    private final Provision provision;
    private final Supplies supplies;
    private final int[] order;
    /** The place on the way of each opening, by its place in the list they came in. */
    private final int[] numbers;
    private final int[][] used;
    private final Tray[] trays;
    private final List<Deque<Debt>> debts = new ArrayList<>();
    private final int[] turns;
    private final Unit[][] leaving;
    private final Move[][] entering;
    private final Station shelved = new Station.OnShelf();
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
        this.turns = new int[order.length];
        this.leaving = new Unit[order.length][];
        this.entering = new Move[order.length][];
        this.numbers = new int[order.length];
        for (int turn = 0; turn < order.length; turn++) {
            turns[order[turn]] = turn + 1;
            work(order[turn]);
        }
        for (int opening = 0; opening < order.length; opening++) {
            numbers[table.given(opening)] = opening;
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

    private void work(int opening) {
        AssetTag tag = table.opening(opening).tag();
        Swap swap = table.swap(opening);
        entering[opening] = new Move[swap.entries()];
        for (int j = 0; j < swap.takes(); j++) {
            fetch(opening, j);
        }
        Map<String, String> within = table.opening(opening).changes().within();
        leaving[opening] = new Unit[within.size() + swap.exits()];
        int next = 0;
        for (Map.Entry<String, String> way : within.entrySet()) {
            Unit unit = new Unit(table.opening(opening).before().in(way.getKey()),
                    new Station.InSlot(tag, way.getKey()));
            unit.goesTo(new Station.InSlot(tag, way.getValue()));
            leaving[opening][next++] = unit;
        }
        for (int exit = 0; exit < swap.exits(); exit++) {
            Unit unit = new Unit(swap.leaving(exit), new Station.InSlot(tag, swap.exit(exit)));
            leaving[opening][next++] = unit;
            putDown(opening, unit, swap.givenFrom(exit));
        }
    }

    /** What is there for one kind an opening takes: bought ones, then the shelf, then pulled ones. */
    private void fetch(int opening, int take) {
        Swap swap = table.swap(opening);
        int kind = swap.take(take);
        Piece piece = table.pieces().get(kind);
        int next = 0;
        for (int count = provision.ordered(opening, take); count > 0; count--) {
            enter(opening, swap.entryOf(take, next++), supplies.takeOrdered(piece, table.opening(opening).centre()));
        }
        for (int count = provision.shelf(opening, take); count > 0; count--) {
            supplies.takeFromShelf(piece);
            enter(opening, swap.entryOf(take, next++), shelved);
        }
        int room = table.room(opening);
        for (int count = provision.pulled(opening, take); count > 0; count--) {
            Unit unit = trays[kind].take(room, table.siteOf(room));
            if (unit != null) {
                enter(opening, swap.entryOf(take, next++), unit);
            }
        }
        for (; next < swap.taken(take); next++) {
            debts.get(kind).add(new Debt(opening, swap.entryOf(take, next)));
        }
    }

    private void enter(int opening, int entry, Station from) {
        entering[opening][entry] = new Move(table.swap(opening).entering(entry), from, station(opening, entry));
    }

    private void enter(int opening, int entry, Unit unit) {
        unit.goesTo(station(opening, entry));
        entering[opening][entry] = unit.move();
    }

    private Station station(int opening, int entry) {
        return new Station.InSlot(table.opening(opening).tag(), table.swap(opening).entry(entry));
    }

    private void putDown(int opening, Unit unit, int give) {
        int[] left = used[opening];
        Swap swap = table.swap(opening);
        if (give >= 0 && left[give] > 0) {
            left[give]--;
            int room = table.room(opening);
            trays[swap.give(give)].put(unit, room, table.siteOf(room));
            return;
        }
        Debt waiting = give < 0 ? null : debts.get(swap.give(give)).poll();
        if (waiting != null) {
            enter(waiting.opening(), waiting.entry(), unit);
            rings.computeIfAbsent(table.opening(waiting.opening()).tag(), unused -> new ArrayList<>())
                    .add(unit.move());
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

    /** The openings, first ones first, by their places in the list they came in. */
    public int[] order() {
        int[] places = new int[order.length];
        for (int turn = 0; turn < order.length; turn++) {
            places[turn] = table.given(order[turn]);
        }
        return places;
    }

    /**
     * The moves of an opening: what leaves its slot first, then what comes from outside.
     *
     * @param place its place in the list they came in
     */
    public List<Move> moves(int place) {
        Unit[] out = leaving[numbers[place]];
        Move[] in = entering[numbers[place]];
        Move[] moves = new Move[out.length + in.length];
        for (int i = 0; i < out.length; i++) {
            moves[i] = out[i].move();
        }
        System.arraycopy(in, 0, moves, out.length, in.length);
        return List.of(moves);
    }

    /**
     * Place in the order of work, 1 for the first.
     *
     * @param place the opening's place in the list they came in
     */
    public int turn(int place) {
        return turns[numbers[place]];
    }

    /** Machines opened before a module they need is pulled, and how it comes at last. */
    public Map<AssetTag, List<Move>> rings() {
        return Collections.unmodifiableMap(rings);
    }
}
