package slotledger.planner.internal.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Keeps the way open where kinds are handed round in a ring. Kinds are the corners of a graph, and an opening that
 * takes one and gives another is an edge. A tour that uses every edge (Euler's) exists exactly where each corner is
 * left at last by an edge that leads on to the end of the tour; all other edges may come in any order (the trees of
 * de Bruijn, van Aardenne-Ehrenfest, Smith and Tutte; from memory). So for each kind of a ring one opening is held
 * back until it is the last to wait for that kind. A ring that nothing from outside enters has no end of its own: it
 * begins and ends at a kind that must be borrowed.
 */
final class Exits {

    private final WorkTable table;
    private final boolean[] useful;
    private final int[] exits;
    private final BitSet roots = new BitSet();
    private final BitSet reached = new BitSet();
    private final BitSet ringed;
    private final List<List<Integer>> givers = new ArrayList<>();

    /**
     * Finds them.
     *
     * @param useful by kind: whether somebody waits until some are pulled
     * @param stock  by kind: how many are there when the work begins
     */
    Exits(WorkTable table, boolean[] useful, int[] stock) {
        this.table = table;
        this.useful = useful.clone();
        int kinds = table.pieces().size();
        this.exits = new int[kinds];
        Arrays.fill(exits, -1);
        this.ringed = ringed(kinds);
        if (ringed.isEmpty()) {
            return;
        }
        int[] excess = stock.clone();
        for (int kind = 0; kind < kinds; kind++) {
            givers.add(new ArrayList<>());
        }
        for (int i = table.size() - 1; i >= 0; i--) {
            register(i, excess);
        }
        Deque<Integer> next = new ArrayDeque<>();
        for (int kind = 0; kind < kinds; kind++) {
            if (ringed.get(kind) && excess[kind] > 0) {
                reach(kind, -1, next);
            }
        }
        for (int i = table.size() - 1; i >= 0; i--) {
            int kind = onlyKind(i);
            if (kind >= 0 && ringed.get(kind) && !leadsIntoRing(i)) {
                reach(kind, i, next);
            }
        }
        spread(next);
        for (int i = 0; i < table.size(); i++) {
            int kind = onlyKind(i);
            if (kind >= 0 && ringed.get(kind) && !reached.get(kind)) {
                roots.set(kind);
                reach(kind, -1, next);
                spread(next);
            }
        }
    }

    private void register(int opening, int[] excess) {
        Swap swap = table.swap(opening);
        for (int j = 0; j < swap.takes(); j++) {
            excess[swap.take(j)] -= swap.taken(j);
        }
        for (int j = 0; j < swap.gives(); j++) {
            excess[swap.give(j)] += swap.given(j);
            if (onlyKind(opening) >= 0 && ringed.get(swap.give(j))) {
                givers.get(swap.give(j)).add(opening);
            }
        }
    }

    private boolean leadsIntoRing(int opening) {
        Swap swap = table.swap(opening);
        for (int j = 0; j < swap.gives(); j++) {
            if (ringed.get(swap.give(j))) {
                return true;
            }
        }
        return false;
    }

    /** The one kind of those waited for that an opening takes; -1 where there is none or more than one. */
    private int onlyKind(int opening) {
        Swap swap = table.swap(opening);
        int found = -1;
        for (int j = 0; j < swap.takes(); j++) {
            if (useful[swap.take(j)]) {
                if (found >= 0) {
                    return -1;
                }
                found = swap.take(j);
            }
        }
        return found;
    }

    private void reach(int kind, int exit, Deque<Integer> next) {
        if (!reached.get(kind)) {
            reached.set(kind);
            exits[kind] = exit;
            next.add(kind);
        }
    }

    private void spread(Deque<Integer> next) {
        while (!next.isEmpty()) {
            for (int opening : givers.get(next.remove())) {
                int kind = onlyKind(opening);
                if (ringed.get(kind)) {
                    reach(kind, opening, next);
                }
            }
        }
    }

    /** Kinds that may lie in a ring: those left when kinds that nothing leads to, or from, are struck out. */
    private BitSet ringed(int kinds) {
        List<BitSet> onward = new ArrayList<>();
        List<BitSet> back = new ArrayList<>();
        for (int kind = 0; kind < kinds; kind++) {
            onward.add(new BitSet());
            back.add(new BitSet());
        }
        for (int i = 0; i < table.size(); i++) {
            Swap swap = table.swap(i);
            for (int j = 0; j < swap.takes(); j++) {
                for (int out = 0; useful[swap.take(j)] && out < swap.gives(); out++) {
                    if (useful[swap.give(out)]) {
                        onward.get(swap.take(j)).set(swap.give(out));
                        back.get(swap.give(out)).set(swap.take(j));
                    }
                }
            }
        }
        BitSet left = new BitSet();
        left.set(0, kinds);
        boolean more = true;
        while (more) {
            more = false;
            for (int kind = left.nextSetBit(0); kind >= 0; kind = left.nextSetBit(kind + 1)) {
                if (!onward.get(kind).intersects(left) || !back.get(kind).intersects(left)) {
                    left.clear(kind);
                    more = true;
                }
            }
        }
        return left;
    }

    /** The opening that is held back until it is the last to wait for a kind; -1 where none is. */
    int exit(int kind) {
        return exits[kind];
    }

    /** Whether a ring that nothing from outside enters begins best with this kind. */
    boolean isRoot(int kind) {
        return roots.get(kind);
    }
}
