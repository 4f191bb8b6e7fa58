package slotledger.ojalgo.internal;

import java.util.ArrayList;
import java.util.List;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;

/** Draws the limits of variables closer where a row leaves them no other choice, in whole numbers. */
final class Propagation {

    private static final int MOST_ROUNDS = 10;

    private record Terms(int[] variables, long[] factors, long low, long high) {
        static Terms of(Linear sum, long low, long high) {
            int[] variables = new int[sum.size()];
            long[] factors = new long[sum.size()];
            int[] next = {0};
            sum.forEach((variable, factor) -> {
                variables[next[0]] = variable;
                factors[next[0]++] = factor;
            });
            return new Terms(variables, factors, low, high);
        }
    }

    private final List<Terms> rows = new ArrayList<>();
    private final Linear goal;

    Propagation(IntegerProgramme programme, Linear goal) {
        this.goal = goal;
        for (Row row : programme.rows()) {
            rows.add(Terms.of(row.sum(), row.low(), row.high()));
        }
    }

    /**
     * Tightens a box in place.
     *
     * @param most largest goal of interest
     * @return false where the box holds no values that keep all rows and have such a goal
     */
    boolean tighten(Box box, long most) {
        Terms cut = Terms.of(goal, IntegerProgramme.NO_LOW, most);
        try {
            boolean changed = true;
            for (int round = 0; changed && round < MOST_ROUNDS; round++) {
                changed = false;
                for (int i = 0; i <= rows.size(); i++) {
                    Terms row = i < rows.size() ? rows.get(i) : cut;
                    int outcome = row.high() == IntegerProgramme.NO_HIGH ? 0 : atMost(row, 1, row.high(), box);
                    int other = outcome < 0 || row.low() == IntegerProgramme.NO_LOW
                            ? 0 : atMost(row, -1, -row.low(), box);
                    if (outcome < 0 || other < 0) {
                        return false;
                    }
                    changed |= outcome + other > 0;
                }
            }
            return true;
        } catch (ArithmeticException tooLarge) {
            // What was tightened so far holds; a wider box is only slower.
            return true;
        }
    }

    /** -1 where the row can't hold, 1 where some limit moved, else 0. */
    private static int atMost(Terms row, int sign, long limit, Box box) {
        long least = 0;
        for (int i = 0; i < row.variables().length; i++) {
            long factor = sign * row.factors()[i];
            int variable = row.variables()[i];
            least = Math.addExact(least, Math.multiplyExact(factor, factor > 0 ? box.low[variable]
                    : box.high[variable]));
        }
        long room = Math.subtractExact(limit, least);
        if (room < 0) {
            return -1;
        }
        int moved = 0;
        for (int i = 0; i < row.variables().length; i++) {
            long factor = sign * row.factors()[i];
            int variable = row.variables()[i];
            long width = room / Math.abs(factor);
            if (box.high[variable] - box.low[variable] > width) {
                if (factor > 0) {
                    box.high[variable] = box.low[variable] + width;
                } else {
                    box.low[variable] = box.high[variable] - width;
                }
                moved = 1;
            }
        }
        return moved;
    }
}
