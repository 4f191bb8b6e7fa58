package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Rooms of sites, or sites, in which something can be done. First come those that can be finished in one visit: where
 * no more is waited for than is pulled there.
 */
final class Places {

    private final int[] ready;
    private final int[] waits;
    private final int[] gives;
    private final int[] parents;
    private final long[] keys;
    private final List<TreeSet<Long>> open = new ArrayList<>();

    /** Places within others; {@code parents} says in which each is. */
    Places(int[] parents, int parentCount) {
        this.parents = parents.clone();
        this.ready = new int[parents.length];
        this.waits = new int[parents.length];
        this.gives = new int[parents.length];
        this.keys = new long[parents.length];
        for (int i = 0; i < parentCount; i++) {
            open.add(new TreeSet<>());
        }
        for (int place = 0; place < parents.length; place++) {
            keys[place] = -1;
        }
    }

    /** Counts what can be done at a place, what is waited for there, and what is still pulled there. */
    void change(int place, int readyMore, int waitsMore, int givesMore) {
        ready[place] += readyMore;
        waits[place] += waitsMore;
        gives[place] += givesMore;
        long key = ready[place] == 0 ? -1
                : ((long) lacks(place) << Integer.SIZE) + place;
        if (key != keys[place]) {
            if (keys[place] >= 0) {
                open.get(parents[place]).remove(keys[place]);
            }
            if (key >= 0) {
                open.get(parents[place]).add(key);
            }
            keys[place] = key;
        }
    }

    /** How many more are waited for at a place than are still pulled there. */
    int lacks(int place) {
        return Math.max(0, waits[place] - gives[place]);
    }

    /** The best place to go to within a parent; -1 where nothing can be done there. */
    int best(int parent) {
        return open.get(parent).isEmpty() ? -1 : (int) (long) open.get(parent).first();
    }
}
