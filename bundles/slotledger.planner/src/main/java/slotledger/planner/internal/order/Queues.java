package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Openings that wait, by the kind and by how many of it they need; near ones are found first. */
final class Queues {

    /** What is asked of a set of openings. */
    static final int QUESTIONS = 3;
    private static final int IN_ROOM = 0;
    private static final int AT_SITE = 1;
    private static final int ANYWHERE = 2;

    private final WorkTable table;
    private final int[] siteStarts;
    /** By kind; the key is twice the count needed, and one more where the opening gives nothing to others. */
    private final IndexSet[][] byKind;
    private final int[] waiting;
    private final BitSet kinds = new BitSet();

    Queues(WorkTable table) {
        this.table = table;
        byKind = new IndexSet[table.pieces().size()][0];
        waiting = new int[byKind.length];
        siteStarts = new int[table.sites() + 1];
        for (int room = table.rooms() - 1; room >= 0; room--) {
            siteStarts[table.siteOf(room)] = table.startOf(room);
        }
        siteStarts[table.sites()] = table.size();
    }

    void add(int kind, int key, int opening) {
        if (key >= byKind[kind].length) {
            byKind[kind] = Arrays.copyOf(byKind[kind], key + 1);
        }
        if (byKind[kind][key] == null) {
            byKind[kind][key] = new IndexSet(table.size(), QUESTIONS);
        }
        byKind[kind][key].add(opening);
        waiting[kind]++;
        kinds.set(kind);
    }

    void remove(int kind, int key, int opening) {
        byKind[kind][key].remove(opening);
        waiting[kind]--;
        if (waiting[kind] == 0) {
            kinds.clear(kind);
        }
    }

    /** The first kind from one on that somebody waits for; -1 where there is none. */
    int nextKind(int from) {
        return kinds.nextSetBit(from);
    }

    /** The nearest opening that needs at most so many of a kind; -1 where there is none. */
    int nearest(int kind, int most, int place) {
        int best = -1;
        IndexSet[] queues = byKind[kind];
        for (int key = 0; key < queues.length && key / 2 <= most; key++) {
            if (queues[key] != null && !queues[key].isEmpty()) {
                best = nearer(best, nearest(queues[key], place), place);
            }
        }
        return best;
    }

    /** The nearest of a set: of the same room, then the same site, then the first of all; -1 where it is empty. */
    int nearest(IndexSet queue, int place) {
        if (place >= 0) {
            int room = table.room(place);
            int here = queue.next(table.startOf(room), IN_ROOM);
            if (here >= 0 && here < table.startOf(room + 1)) {
                return here;
            }
            int site = table.siteOf(room);
            int there = queue.next(siteStarts[site], AT_SITE);
            if (there >= 0 && there < siteStarts[site + 1]) {
                return there;
            }
        }
        return queue.next(0, ANYWHERE);
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
        for (int kind = nextKind(0); kind >= 0; kind = nextKind(kind + 1)) {
            for (int key = givers ? 0 : 1; key < byKind[kind].length; key += 2) {
                if (byKind[kind][key] != null && !byKind[kind][key].isEmpty()) {
                    heads.add(byKind[kind][key].next(0, ANYWHERE));
                }
            }
        }
        return heads;
    }
}
