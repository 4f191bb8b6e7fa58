package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Openings that wait, by the kind and by how many of it they need; near ones are found first. */
final class Queues {

    private final WorkTable table;
    private final int[] siteStarts;
    /** By kind; the key is twice the count needed, and one more where the opening gives nothing to others. */
    private final List<TreeMap<Integer, TreeSet<Integer>>> byKind = new ArrayList<>();
    private final TreeSet<Integer> kinds = new TreeSet<>();

    Queues(WorkTable table) {
        this.table = table;
        table.pieces().forEach(piece -> byKind.add(new TreeMap<>()));
        siteStarts = new int[table.sites() + 1];
        for (int room = table.rooms() - 1; room >= 0; room--) {
            siteStarts[table.siteOf(room)] = table.startOf(room);
        }
        siteStarts[table.sites()] = table.size();
    }

    void add(int kind, int key, int opening) {
        byKind.get(kind).computeIfAbsent(key, unused -> new TreeSet<>()).add(opening);
        kinds.add(kind);
    }

    void remove(int kind, int key, int opening) {
        TreeMap<Integer, TreeSet<Integer>> queues = byKind.get(kind);
        TreeSet<Integer> queue = queues.get(key);
        queue.remove(opening);
        if (queue.isEmpty()) {
            queues.remove(key);
            if (queues.isEmpty()) {
                kinds.remove(kind);
            }
        }
    }

    /** Kinds somebody waits for. */
    TreeSet<Integer> kinds() {
        return kinds;
    }

    /** The nearest opening that needs at most so many of a kind; -1 where there is none. */
    int nearest(int kind, int most, int place) {
        int best = -1;
        for (TreeSet<Integer> queue : byKind.get(kind).headMap(2 * most + 1, true).values()) {
            best = nearer(best, nearest(queue, place), place);
        }
        return best;
    }

    /** The nearest of a set: of the same room, then the same site, then the first of all; -1 where it is empty. */
    int nearest(TreeSet<Integer> queue, int place) {
        if (place >= 0) {
            int room = table.room(place);
            Integer here = queue.ceiling(table.startOf(room));
            if (here != null && here < table.startOf(room + 1)) {
                return here;
            }
            Integer there = queue.ceiling(siteStarts[table.siteOf(room)]);
            if (there != null && there < siteStarts[table.siteOf(room) + 1]) {
                return there;
            }
        }
        return queue.isEmpty() ? -1 : queue.first();
    }

    /** The nearer of two openings; the first on the way where they are as near. */
    int nearer(int one, int other, int place) {
        if (one < 0 || other < 0) {
            return Math.max(one, other);
        }
        int difference = Integer.compare(distance(one, place), distance(other, place));
        return difference < 0 || difference == 0 && one < other ? one : other;
    }

    /** 0 in the same room, 1 at the same site, 2 elsewhere. */
    int distance(int opening, int place) {
        if (place < 0) {
            return 2;
        }
        int room = table.room(opening);
        int here = table.room(place);
        return room == here ? 0 : table.siteOf(room) == table.siteOf(here) ? 1 : 2;
    }

    /** For each kind and count the first that waits. */
    List<Integer> heads(boolean givers) {
        List<Integer> heads = new ArrayList<>();
        for (int kind : kinds) {
            for (Map.Entry<Integer, TreeSet<Integer>> queue : byKind.get(kind).entrySet()) {
                if (queue.getKey() % 2 == 0 == givers) {
                    heads.add(queue.getValue().first());
                }
            }
        }
        return heads;
    }
}
