package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Settles which openings are served from what is there when the work begins (the order, set aside by cost centre, and
 * the shelf) and which from modules pulled on the way. A site is served by what is pulled at that site as far as
 * possible, so that few modules travel; the shelf goes first to sites that would have to wait for others. Within a
 * site openings that give something for others are served first, since many wait for them.
 */
final class Provision {

    /** What the openings of one cost centre at one site need of one kind, and what of it is still to be shared out. */
    private static final class Cell {
        private final int site;
        private final int centre;
        private int needed;
        private int own;
        private int away;
        private int ordered;
        private int shelf;

        private Cell(int site, int centre) {
            this.site = site;
            this.centre = centre;
        }
    }

    private static final int ROUNDS = 3;

    private final WorkTable table;
    private final List<Map<Long, Cell>> cells = new ArrayList<>();
    private final int[][] pulledAt;
    /** Where what an opening takes begins in the lists of all that is taken. */
    private final int[] starts;
    private final Cell[] cellOf;
    private final int[] ordered;
    private final int[] shelf;
    private final boolean[] useful;
    private final int[] stock;
    private final Exits exits;

    Provision(WorkTable table, Supplies supplies, boolean reusePulled) {
        this.table = table;
        this.starts = new int[table.size() + 1];
        for (int i = 0; i < table.size(); i++) {
            starts[i + 1] = starts[i] + table.swap(i).takes();
        }
        this.cellOf = new Cell[starts[table.size()]];
        this.ordered = new int[cellOf.length];
        this.shelf = new int[cellOf.length];
        this.pulledAt = new int[table.pieces().size()][table.sites()];
        this.useful = new boolean[table.pieces().size()];
        this.stock = new int[table.pieces().size()];
        for (int kind = 0; kind < table.pieces().size(); kind++) {
            cells.add(new LinkedHashMap<>());
        }
        for (int i = 0; i < table.size(); i++) {
            count(i, reusePulled);
        }
        for (int kind = 0; kind < cells.size(); kind++) {
            share(kind, supplies);
        }
        exits = new Exits(table, useful, stock);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < table.size(); i++) {
                serve(i, round);
            }
        }
    }

    private Cell cell(int opening, int kind) {
        int site = table.siteOf(table.room(opening));
        int centre = table.centre(opening);
        return cells.get(kind).computeIfAbsent(
                (long) site * table.centres().size() + centre, unused -> new Cell(site, centre));
    }

    private void count(int opening, boolean reusePulled) {
        Swap swap = table.swap(opening);
        for (int j = 0; j < swap.takes(); j++) {
            Cell cell = cell(opening, swap.take(j));
            cell.needed += swap.taken(j);
            cellOf[starts[opening] + j] = cell;
        }
        for (int j = 0; reusePulled && j < swap.gives(); j++) {
            pulledAt[swap.give(j)][table.siteOf(table.room(opening))] += swap.given(j);
        }
    }

    private void share(int kind, Supplies supplies) {
        int[] own = new int[table.centres().size()];
        cells.get(kind).values().forEach(cell -> own[cell.centre] += cell.needed);
        for (int centre = 0; centre < own.length; centre++) {
            own[centre] -= supplies.ordered(table.pieces().get(kind), table.centres().get(centre));
            if (own[centre] < 0) {
                throw new IllegalStateException("The order must not hold more for machines than they need.");
            }
        }
        int[] pulled = pulledAt[kind];
        for (Cell cell : cells.get(kind).values()) {
            cell.own = Math.min(own[cell.centre], Math.min(cell.needed, pulled[cell.site]));
            own[cell.centre] -= cell.own;
            pulled[cell.site] -= cell.own;
        }
        for (Cell cell : cells.get(kind).values()) {
            cell.away = Math.min(own[cell.centre], cell.needed - cell.own);
            own[cell.centre] -= cell.away;
            cell.own += cell.away;
            cell.ordered = cell.needed - cell.own;
            stock[kind] += cell.ordered;
        }
        int left = supplies.shelf(table.pieces().get(kind));
        stock[kind] += left;
        for (Cell cell : cells.get(kind).values()) {
            cell.shelf = Math.min(left, cell.away);
            left -= cell.shelf;
        }
        for (Cell cell : cells.get(kind).values()) {
            int more = Math.min(left, cell.own - cell.shelf);
            cell.shelf += more;
            left -= more;
            useful[kind] |= cell.own > cell.shelf;
        }
    }

    /**
     * In the first round whole openings that give something, in the second all whole ones that aren't held back, then
     * what is left.
     */
    private void serve(int opening, int round) {
        Swap swap = table.swap(opening);
        if (round == 0 && !givesUseful(swap)) {
            return;
        }
        for (int j = 0; j < swap.takes(); j++) {
            if (round < ROUNDS - 1 && exits.exit(swap.take(j)) == opening) {
                continue;
            }
            Cell cell = cellOf[starts[opening] + j];
            int missing = pulled(opening, j);
            if (round == ROUNDS - 1 || cell.ordered + cell.shelf >= missing) {
                int fromOrder = Math.min(missing, cell.ordered);
                int fromShelf = Math.min(missing - fromOrder, cell.shelf);
                cell.ordered -= fromOrder;
                cell.shelf -= fromShelf;
                ordered[starts[opening] + j] += fromOrder;
                shelf[starts[opening] + j] += fromShelf;
            }
        }
    }

    private boolean givesUseful(Swap swap) {
        for (int j = 0; j < swap.gives(); j++) {
            if (useful[swap.give(j)]) {
                return true;
            }
        }
        return false;
    }

    /** Whether a kind is waited for by somebody until it is pulled. */
    boolean isUseful(int kind) {
        return useful[kind];
    }

    Exits exits() {
        return exits;
    }

    int ordered(int opening, int take) {
        return ordered[starts[opening] + take];
    }

    int shelf(int opening, int take) {
        return shelf[starts[opening] + take];
    }

    /** How many of what an opening takes have to be pulled first. */
    int pulled(int opening, int take) {
        int place = starts[opening] + take;
        return table.swap(opening).taken(take) - ordered[place] - shelf[place];
    }
}
