package slotledger.workbench.internal.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * A scale with round numbers on it.
 *
 * @param most  the largest value, above 0; the smallest is 0
 * @param step  from one mark to the next: 1, 2 or 5 times a power of ten
 * @param start where the value 0 lies, in pixels
 * @param end   where the largest value lies, in pixels
 */
record Axis(long most, long step, int start, int end) {

    private static final int[] ROUND = {1, 2, 5};

    Axis {
        if (most < 1 || step < 1) {
            throw new IllegalArgumentException("The largest value (%d) and the step (%d) must be above 0."
                    .formatted(most, step));
        }
    }

    /** A scale from 0 to at least a value, with at most so many marks above 0. */
    static Axis of(long value, int marks, int start, int end) {
        long least = Math.max(1, value);
        for (long power = 1;; power *= 10) {
            for (int round : ROUND) {
                long step = round * power;
                long needed = -Math.floorDiv(-least, step);
                if (needed <= marks) {
                    return new Axis(needed * step, step, start, end);
                }
            }
        }
    }

    int at(long value) {
        return start + (int) Math.round((double) value / most * (end - start));
    }

    List<Long> marks() {
        List<Long> marks = new ArrayList<>();
        for (long mark = 0; mark <= most; mark += step) {
            marks.add(mark);
        }
        return marks;
    }
}
