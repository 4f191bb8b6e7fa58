package slotledger.planner.internal.milp;

import java.math.BigInteger;
import java.util.Arrays;
import slotledger.solver.IntegerProgramme;

/**
 * A bound of a goal in exact arithmetic, for given prices of the rows: each row is paid for instead of being kept, then
 * every group and every other variable takes what is best for itself. No values that keep all rows have a smaller goal,
 * whatever the prices are. Prices and reduced costs are whole multiples of a power of a half.
 */
final class Bound {

    private static final int MOST_SHIFT = 30;
    private static final int COST_BITS = 50;
    private static final int PRODUCT_BITS = 60;

    private final Columns columns;
    private final long[] cost;
    private final Box box;
    private final int shift;
    private final long[] mostPrice;
    private final boolean[] isPlain;
    private final long[] reduced;
    private final int[] best;
    private long[] prices = {};
    private BigInteger scaled = BigInteger.ZERO;

    Bound(Columns columns, long[] cost, Box box) {
        this.columns = columns;
        this.cost = cost;
        this.box = box;
        long largest = 1;
        for (long each : cost) {
            largest = Math.max(largest, Math.abs(each));
        }
        shift = Math.max(0, Math.min(MOST_SHIFT, COST_BITS - bits(largest)));
        mostPrice = mostPrices(columns);
        isPlain = plainGroups(columns, box);
        reduced = new long[columns.size];
        best = new int[columns.groups];
    }

    /** So large that no product with a factor leaves the range of a long. */
    private static long[] mostPrices(Columns columns) {
        long[] largest = new long[columns.rows];
        Arrays.fill(largest, 1);
        for (int i = 0; i < columns.row.length; i++) {
            largest[columns.row[i]] = Math.max(largest[columns.row[i]], Math.abs(columns.factor[i]));
        }
        for (int row = 0; row < largest.length; row++) {
            largest[row] = 1L << Math.max(0, PRODUCT_BITS - bits(largest[row]));
        }
        return largest;
    }

    private static int bits(long value) {
        return Long.SIZE - Long.numberOfLeadingZeros(value);
    }

    private static boolean[] plainGroups(Columns columns, Box box) {
        boolean[] plain = new boolean[columns.groups];
        for (int group = 0; group < plain.length; group++) {
            plain[group] = true;
            for (int i = columns.firstMember[group]; i < columns.firstMember[group + 1]; i++) {
                int variable = columns.members[i];
                long high = box.high[variable];
                plain[group] &= box.low[variable] == 0 && (high == 0 || high >= columns.total[group]);
            }
        }
        return plain;
    }

    /** Rounds prices so that they can be computed with exactly, and takes away what a row can't have. */
    long[] round(double[] wanted) {
        long[] rounded = new long[columns.rows];
        for (int row = 0; row < rounded.length; row++) {
            double price = Math.scalb(wanted[row], shift);
            long most = mostPrice[row];
            rounded[row] = Double.isNaN(price) ? 0 : Math.round(Math.max(-most, Math.min(most, price)));
            boolean isOpen = rounded[row] > 0 && columns.rowLow[row] == IntegerProgramme.NO_LOW
                    || rounded[row] < 0 && columns.rowHigh[row] == IntegerProgramme.NO_HIGH;
            rounded[row] = isOpen ? 0 : rounded[row];
        }
        return rounded;
    }

    /** Computes the bound for these prices, and keeps them; without prices where the numbers grow too large. */
    BigInteger at(long[] rounded) {
        try {
            return compute(rounded);
        } catch (ArithmeticException e) {
            return compute(new long[columns.rows]);
        }
    }

    private BigInteger compute(long[] rounded) {
        prices = rounded;
        scaled = BigInteger.ZERO;
        for (int row = 0; row < prices.length; row++) {
            if (prices[row] != 0) {
                add(prices[row], prices[row] > 0 ? columns.rowLow[row] : columns.rowHigh[row]);
            }
        }
        for (int variable = 0; variable < columns.size; variable++) {
            reduced[variable] = reduce(variable);
        }
        for (int group = 0; group < columns.groups; group++) {
            addGroup(group);
        }
        for (int variable : columns.single) {
            add(reduced[variable], reduced[variable] > 0 ? box.low[variable] : box.high[variable]);
        }
        return scaled;
    }

    private long reduce(int variable) {
        long sum = cost[variable] << shift;
        for (int i = columns.firstTerm[variable]; i < columns.firstTerm[variable + 1]; i++) {
            sum = Math.subtractExact(sum, prices[columns.row[i]] * columns.factor[i]);
        }
        return sum;
    }

    private void addGroup(int group) {
        int first = columns.firstMember[group];
        int end = columns.firstMember[group + 1];
        int cheapest = -1;
        for (int i = first; i < end; i++) {
            int variable = columns.members[i];
            if (box.high[variable] > 0 && (cheapest < 0 || reduced[variable] < reduced[cheapest])) {
                cheapest = variable;
            }
        }
        best[group] = cheapest < 0 ? columns.members[first] : cheapest;
        if (isPlain[group]) {
            add(reduced[best[group]], columns.total[group]);
            return;
        }
        long left = columns.total[group];
        Integer[] order = new Integer[end - first];
        for (int i = first; i < end; i++) {
            order[i - first] = columns.members[i];
            left -= box.low[columns.members[i]];
            add(reduced[columns.members[i]], box.low[columns.members[i]]);
        }
        Arrays.sort(order, (one, other) -> Long.compare(reduced[one], reduced[other]));
        for (int i = 0; i < order.length && left > 0; i++) {
            long taken = Math.min(left, box.high[order[i]] - box.low[order[i]]);
            add(reduced[order[i]], taken);
            left -= taken;
        }
    }

    private void add(long price, long count) {
        long high = Math.multiplyHigh(price, count);
        long low = price * count;
        scaled = scaled.add((high == 0 && low >= 0) || (high == -1 && low < 0)
                ? BigInteger.valueOf(low) : BigInteger.valueOf(price).multiply(BigInteger.valueOf(count)));
    }

    Columns columns() {
        return columns;
    }

    long[] prices() {
        return prices;
    }

    /** Of the variable, in parts of a unit; only comparisons and {@link #slack} make sense of it. */
    long reduced(int variable) {
        return reduced[variable];
    }

    /** The variable of a group that costs least at these prices. */
    int best(int group) {
        return best[group];
    }

    /** Whether all of a group may get any of its variables. */
    boolean isPlain(int group) {
        return isPlain[group];
    }

    long low(int variable) {
        return box.low[variable];
    }

    long high(int variable) {
        return box.high[variable];
    }

    /** From the bound to a goal, in the parts of reduced costs. */
    BigInteger slack(long goal) {
        return BigInteger.valueOf(goal).shiftLeft(shift).subtract(scaled);
    }

    /** The bound, rounded up: goals are whole numbers. */
    long value() {
        BigInteger up = scaled.negate().shiftRight(shift).negate();
        return up.bitLength() < Long.SIZE ? up.longValue() : Long.MIN_VALUE;
    }

    double unit() {
        return Math.scalb(1.0, -shift);
    }
}
