package slotledger.ojalgo.internal;

import java.math.BigInteger;
import java.util.Arrays;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;

/**
 * A lower bound of a goal, in exact arithmetic, from any prices of the rows.
 *
 * <p>For all values x in a box that keep the rows, and any prices y: goal·x = (goal - yA)·x + y·Ax. The first sum is
 * smallest at a corner of the box, each term of the second at one limit of its row. Good prices give a good bound, bad
 * ones a bad but true one (A. Neumaier, O. Shcherbina, Safe bounds in linear and mixed-integer linear programming,
 * Mathematical Programming 99, 2004, section 3; the idea from memory, with whole numbers in place of intervals).
 */
final class ExactBound {

    /** Prices are rounded to multiples of 2^-SCALE. */
    private static final int SCALE = 32;
    private static final double LARGEST = 0x1p62;

    private final IntegerProgramme programme;
    private final long[] goal;

    ExactBound(IntegerProgramme programme, Linear goal) {
        this.programme = programme;
        this.goal = new long[programme.size()];
        goal.forEach((variable, factor) -> this.goal[variable] = factor);
    }

    /** No whole values within the box that keep all rows have a smaller goal. */
    BigInteger of(double[] prices, Box box) {
        BigInteger[] rest = new BigInteger[goal.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = BigInteger.valueOf(goal[i]).shiftLeft(SCALE);
        }
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < prices.length; i++) {
            Row row = programme.rows().get(i);
            long price = usable(prices[i], row);
            if (price != 0) {
                BigInteger factor = BigInteger.valueOf(price);
                sum = sum.add(factor.multiply(BigInteger.valueOf(price > 0 ? row.low() : row.high())));
                row.sum().forEach((variable, times) ->
                        rest[variable] = rest[variable].subtract(factor.multiply(BigInteger.valueOf(times))));
            }
        }
        for (int i = 0; i < rest.length; i++) {
            long corner = rest[i].signum() > 0 ? box.low[i] : box.high[i];
            if (corner != 0) {
                sum = sum.add(rest[i].multiply(BigInteger.valueOf(corner)));
            }
        }
        return ceiling(sum);
    }

    private static long usable(double price, Row row) {
        double scaled = Math.rint(Math.scalb(price, SCALE));
        boolean useless = Double.isNaN(scaled) || Math.abs(scaled) > LARGEST
                || scaled > 0 && row.low() == IntegerProgramme.NO_LOW
                || scaled < 0 && row.high() == IntegerProgramme.NO_HIGH;
        return useless ? 0 : (long) scaled;
    }

    private static BigInteger ceiling(BigInteger scaled) {
        return scaled.negate().shiftRight(SCALE).negate();
    }

    /** What the box alone allows. */
    BigInteger of(Box box) {
        double[] none = new double[programme.rows().size()];
        Arrays.fill(none, 0);
        return of(none, box);
    }
}
