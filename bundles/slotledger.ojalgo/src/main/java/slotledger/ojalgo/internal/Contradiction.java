package slotledger.ojalgo.internal;

import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.IntegerProgramme.Variable;
import slotledger.solver.Linear;

/**
 * Proves that no values of a box keep all rows: every row may be missed at a price, and the least sum of misses is
 * above 0 in exact arithmetic.
 */
final class Contradiction {

    private final IntegerProgramme elastic = new IntegerProgramme();
    private final int variables;
    private Relaxation relaxation;
    private final Linear misses = new Linear();
    private ExactBound bounds;

    Contradiction(IntegerProgramme programme) {
        variables = programme.size();
        for (Variable variable : programme.variables()) {
            elastic.variable(variable.name(), variable.low(), variable.high());
        }
        for (Row row : programme.rows()) {
            add(row);
        }
    }

    private void add(Row row) {
        Linear sum = new Linear().add(row.sum(), 1);
        if (row.low() != IntegerProgramme.NO_LOW) {
            sum.add(miss(sum, row.low()), 1);
        }
        if (row.high() != IntegerProgramme.NO_HIGH) {
            sum.add(miss(sum, row.high()), -1);
        }
        if (row.low() == row.high()) {
            elastic.equal(row.name(), sum, row.low());
        } else if (row.low() != IntegerProgramme.NO_LOW) {
            elastic.atLeast(row.name(), sum, row.low());
        }
        if (row.low() != row.high() && row.high() != IntegerProgramme.NO_HIGH) {
            elastic.atMost(row.name(), sum, row.high());
        }
    }

    /** As large as it must be for the row to hold at any corner. */
    private int miss(Linear sum, long limit) {
        long[] worst = {0};
        sum.forEach((variable, factor) -> {
            if (variable < variables) {
                Variable each = elastic.variables().get(variable);
                worst[0] += Math.max(Math.abs(factor * each.low()), Math.abs(factor * each.high()));
            }
        });
        int miss = elastic.variable("", 0, worst[0] + Math.abs(limit));
        misses.add(miss, 1);
        return miss;
    }

    boolean isProven(Box box) {
        if (relaxation == null) {
            relaxation = new Relaxation(elastic, misses);
            bounds = new ExactBound(elastic, misses);
        }
        Box wide = Box.of(elastic);
        System.arraycopy(box.low, 0, wide.low, 0, variables);
        System.arraycopy(box.high, 0, wide.high, 0, variables);
        return bounds.of(relaxation.solve(wide).prices(), wide).signum() > 0;
    }
}
