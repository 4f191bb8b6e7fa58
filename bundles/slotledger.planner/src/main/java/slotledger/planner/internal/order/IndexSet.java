package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A set of numbers from 0 to below a size, which finds the next one in a few steps however few there are, and takes
 * little room where they are few. It remembers its last answer to each kind of question, because a walk from room to
 * room asks the same many times before anything between question and answer changes.
 */
final class IndexSet {

    private static final int BITS = 6;
    private static final int WORDS = 1 << BITS;

    /** The numbers; a page none of whose numbers are in the set is null. */
    private final long[][] pages;
    /** The first says which words of the pages are not empty, each further one the same of the one before. */
    private final List<long[]> levels = new ArrayList<>();

    /** By kind of question: from where was asked, and what was found. */
    private final int[] asked;
    private final int[] found;

    IndexSet(int size) {
        this(size, 1);
    }

    /**
     * An empty set.
     *
     * @param questions how many answers are remembered
     */
    IndexSet(int size, int questions) {
        asked = new int[questions];
        found = new int[questions];
        Arrays.fill(asked, Integer.MAX_VALUE);
        int words = Math.max(1, words(size));
        do {
            words = words(words);
            levels.add(new long[words]);
        } while (words > 1);
        pages = new long[levels.get(0).length][];
    }

    private static int words(int size) {
        return (size + Long.SIZE - 1) >> BITS;
    }

    void add(int number) {
        for (int question = 0; question < asked.length; question++) {
            if (number >= asked[question] && (found[question] < 0 || number < found[question])) {
                found[question] = number;
            }
        }
        int word = number >> BITS;
        int page = word >> BITS;
        if (pages[page] == null) {
            pages[page] = new long[WORDS];
        }
        pages[page][word & WORDS - 1] |= 1L << number;
        int place = word;
        for (long[] level : levels) {
            level[place >> BITS] |= 1L << place;
            place >>= BITS;
        }
    }

    void remove(int number) {
        if (!contains(number)) {
            return;
        }
        for (int question = 0; question < asked.length; question++) {
            if (number == found[question]) {
                asked[question] = Integer.MAX_VALUE;
            }
        }
        int word = number >> BITS;
        long[] page = pages[word >> BITS];
        page[word & WORDS - 1] &= ~(1L << number);
        if (page[word & WORDS - 1] != 0) {
            return;
        }
        int place = word;
        for (long[] level : levels) {
            level[place >> BITS] &= ~(1L << place);
            if (level[place >> BITS] != 0) {
                return;
            }
            place >>= BITS;
            if (level == levels.get(0)) {
                pages[place] = null;
            }
        }
    }

    boolean contains(int number) {
        long[] page = pages[number >> 2 * BITS];
        return page != null && (page[number >> BITS & WORDS - 1] & 1L << number) != 0;
    }

    boolean isEmpty() {
        return levels.get(levels.size() - 1)[0] == 0;
    }

    /** The smallest number from one on; -1 where there is none. */
    int next(int from) {
        return next(from, 0);
    }

    /** The same; questions with the same number are near each other. */
    int next(int from, int question) {
        if (from < asked[question] || found[question] >= 0 && found[question] < from) {
            asked[question] = from;
            found[question] = find(from);
        }
        return found[question];
    }

    private int find(int from) {
        int word = from >> BITS;
        if (word >> BITS >= pages.length) {
            return -1;
        }
        long[] page = pages[word >> BITS];
        long rest = page == null ? 0 : page[word & WORDS - 1] & -1L << from;
        if (rest != 0) {
            return (word << BITS) + Long.numberOfTrailingZeros(rest);
        }
        int place = word + 1;
        for (int level = 0; level < levels.size(); level++) {
            int above = place >> BITS;
            if (above >= levels.get(level).length) {
                return -1;
            }
            rest = levels.get(level)[above] & -1L << place;
            if (rest != 0) {
                return down(level, (above << BITS) + Long.numberOfTrailingZeros(rest));
            }
            place = above + 1;
        }
        return -1;
    }

    private int down(int top, int found) {
        int place = found;
        for (int level = top - 1; level >= 0; level--) {
            place = (place << BITS) + Long.numberOfTrailingZeros(levels.get(level)[place]);
        }
        return (place << BITS) + Long.numberOfTrailingZeros(pages[place >> BITS][place & WORDS - 1]);
    }
}
