package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** How many of its own modules a machine may keep, by kind; most first. */
final class WaysToKeep {

    private WaysToKeep() {
    }

    /**
     * Every number of every kind, or, where these are too many, the largest modules first.
     *
     * @param modules the kinds of modules, largest first
     */
    static List<int[]> of(ClassSockets sockets, int[] modules) {
        List<int[]> ways = new ArrayList<>(List.of(new int[sockets.kindCount()]));
        long all = IntStream.of(modules).mapToLong(kind -> sockets.owned(kind) + 1L).reduce(1, WaysToKeep::times);
        for (int kind : modules) {
            if (all <= Fillings.MOST_WAYS_TO_KEEP) {
                addEach(sockets.owned(kind), kind, ways);
            } else {
                addAfterLast(sockets.owned(kind), kind, ways);
            }
        }
        ways.sort(Comparator.comparingInt((int[] way) -> IntStream.of(way).sum()).reversed());
        return ways;
    }

    private static long times(long one, long other) {
        return Math.min(one * other, Fillings.MOST_WAYS_TO_KEEP + 1L);
    }

    private static void addEach(int owned, int kind, List<int[]> ways) {
        for (int[] way : List.copyOf(ways)) {
            for (int count = 1; count <= owned; count++) {
                int[] more = way.clone();
                more[kind] = count;
                ways.add(more);
            }
        }
    }

    private static void addAfterLast(int owned, int kind, List<int[]> ways) {
        int[] last = ways.get(ways.size() - 1);
        for (int count = 1; count <= owned; count++) {
            int[] more = last.clone();
            more[kind] = count;
            ways.add(more);
        }
    }
}
