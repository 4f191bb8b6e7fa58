package slotledger.planner.internal.model;

/** Whole numbers that divide others. */
final class Divisors {

    private Divisors() {
    }

    /** The greatest number that divides both. */
    static long greatestCommon(long one, long other) {
        long a = one;
        long b = other;
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }

    /** The least number that both divide. */
    static long leastCommonMultiple(long one, long other) {
        return Math.multiplyExact(one / greatestCommon(one, other), other);
    }
}
