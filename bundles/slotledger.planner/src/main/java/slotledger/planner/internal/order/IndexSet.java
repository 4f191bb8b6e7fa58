package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.List;

/** A set of numbers from 0 to below a size, which finds the next one in a few steps however few there are. */
final class IndexSet {

    private static final int BITS = 6;

    /** The first holds the numbers, each further one says which words of the one before are not empty. */
    private final List<long[]> levels = new ArrayList<>();

    IndexSet(int size) {
        int words = size;
        do {
            words = (words + Long.SIZE - 1) >> BITS;
            levels.add(new long[Math.max(1, words)]);
        } while (words > 1);
    }

    void add(int number) {
        int place = number;
        for (long[] level : levels) {
            level[place >> BITS] |= 1L << place;
            place >>= BITS;
        }
    }

    void remove(int number) {
        int place = number;
        for (long[] level : levels) {
            level[place >> BITS] &= ~(1L << place);
            if (level[place >> BITS] != 0) {
                return;
            }
            place >>= BITS;
        }
    }

    boolean contains(int number) {
        return (levels.get(0)[number >> BITS] & 1L << number) != 0;
    }

    /** The smallest number from one on; -1 where there is none. */
    int next(int from) {
        int place = from;
        for (int level = 0; level < levels.size(); level++) {
            int word = place >> BITS;
            if (word >= levels.get(level).length) {
                return -1;
            }
            long rest = levels.get(level)[word] & -1L << place;
            if (rest != 0) {
                return down(level, (word << BITS) + Long.numberOfTrailingZeros(rest));
            }
            place = word + 1;
        }
        return -1;
    }

    private int down(int top, int found) {
        int place = found;
        for (int level = top - 1; level >= 0; level--) {
            place = (place << BITS) + Long.numberOfTrailingZeros(levels.get(level)[place]);
        }
        return place;
    }
}
