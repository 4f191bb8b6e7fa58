package slotledger.ojalgo.internal;

import slotledger.solver.IntegerProgramme;

/** Smallest and largest values of all variables in one node of the search. */
final class Box {

    final long[] low;
    final long[] high;

    private Box(long[] low, long[] high) {
        this.low = low;
        this.high = high;
    }

    static Box of(IntegerProgramme programme) {
        long[] low = new long[programme.size()];
        long[] high = new long[low.length];
        for (int i = 0; i < low.length; i++) {
            low[i] = programme.low(i);
            high[i] = programme.high(i);
        }
        return new Box(low, high);
    }

    Box copy() {
        return new Box(low.clone(), high.clone());
    }

    /** The same with one variable between other limits. */
    Box with(int variable, long least, long most) {
        Box changed = copy();
        changed.low[variable] = least;
        changed.high[variable] = most;
        return changed;
    }

    boolean isFixed(int variable) {
        return low[variable] == high[variable];
    }
}
