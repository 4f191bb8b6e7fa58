package slotledger.ojalgo.internal;

import java.util.List;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.linear.LinearSolver;
import org.ojalgo.structure.Mutate1D;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;

/**
 * A programme without the demand for whole numbers, solved by ojAlgo's dual simplex. It goes on from the basis of the
 * box before, so that the next box costs little. Nothing it answers is trusted: {@link ExactBound} makes a proof of its
 * prices, whatever they are.
 */
final class Relaxation {

    /** Counted steps of one simplex run; a run that needs more is given up, never one that takes long. */
    private static final int MOST_STEPS = 50_000;
    private static final long NEVER = Long.MAX_VALUE / 4;
    /** Rounding errors add up from box to box. */
    private static final int BOXES_A_BASIS = 500;

    /**
     * What the relaxation says.
     *
     * @param isOptimal whether the values are the best
     * @param values    of all variables
     * @param prices    of all rows, as {@link ExactBound} takes them
     */
    record Answer(boolean isOptimal, double[] values, double[] prices) {
    }

    private final IntegerProgramme programme;
    private final Linear goal;
    private final int[] places;
    private Box last;
    private LinearSolver solver;
    private int boxes;

    Relaxation(IntegerProgramme programme, Linear goal) {
        this.programme = programme;
        this.goal = goal;
        places = new int[programme.rows().size()];
        int sides = 0;
        for (int i = 0; i < places.length; i++) {
            Row row = programme.rows().get(i);
            if (row.low() != row.high()) {
                places[i] = sides;
                sides += (row.low() == IntegerProgramme.NO_LOW ? 0 : 1) + (row.high() == IntegerProgramme.NO_HIGH ? 0
                        : 1);
            }
        }
        for (int i = 0; i < places.length; i++) {
            Row row = programme.rows().get(i);
            if (row.low() == row.high()) {
                places[i] = sides++;
            }
        }
    }

    Answer solve(Box box) {
        if (solver == null || ++boxes % BOXES_A_BASIS == 0) {
            build(box);
        } else {
            for (int i = 0; i < box.low.length; i++) {
                if (box.low[i] != last.low[i] || box.high[i] != last.high[i]) {
                    solver.updateRange(i, box.low[i], box.high[i]);
                }
            }
        }
        last = box;
        Optimisation.Result result = solver.solve();
        if (!result.getState().isOptimal() && result.getState() != Optimisation.State.INFEASIBLE) {
            build(box);
            result = solver.solve();
        }
        return answer(result);
    }

    private Answer answer(Optimisation.Result result) {
        double[] values = new double[programme.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = result.doubleValue(i);
        }
        double[] prices = new double[places.length];
        for (int i = 0; i < prices.length; i++) {
            Row row = programme.rows().get(i);
            if (row.low() == row.high() || row.low() == IntegerProgramme.NO_LOW) {
                prices[i] = -solver.getDualMultiplier(places[i]);
            } else {
                prices[i] = solver.getDualMultiplier(places[i]);
                if (row.high() != IntegerProgramme.NO_HIGH) {
                    prices[i] -= solver.getDualMultiplier(places[i] + 1);
                }
            }
        }
        return new Answer(result.getState().isOptimal(), values, prices);
    }

    private void build(Box box) {
        double[] factors = new double[programme.size()];
        goal.forEach((variable, factor) -> factors[variable] = factor);
        LinearSolver.Builder builder = LinearSolver.newBuilder(factors);
        builder.lower(doubles(box.low)).upper(doubles(box.high));
        rows(builder, programme.rows());
        Optimisation.Options options = new Optimisation.Options();
        options.linear().dual();
        options.sparse = Boolean.FALSE;
        options.iterations_abort = MOST_STEPS;
        options.iterations_suffice = MOST_STEPS;
        options.time_abort = NEVER;
        options.time_suffice = NEVER;
        solver = builder.build(options);
    }

    private static void rows(LinearSolver.Builder builder, List<Row> rows) {
        for (Row row : rows) {
            if (row.low() == row.high()) {
                fill(builder.equality(row.low()), row.sum(), 1);
                continue;
            }
            if (row.low() != IntegerProgramme.NO_LOW) {
                fill(builder.inequality(-(double) row.low()), row.sum(), -1);
            }
            if (row.high() != IntegerProgramme.NO_HIGH) {
                fill(builder.inequality(row.high()), row.sum(), 1);
            }
        }
    }

    private static void fill(Mutate1D row, Linear sum, int sign) {
        sum.forEach((variable, factor) -> row.set((long) variable, (double) sign * factor));
    }

    private static double[] doubles(long[] values) {
        double[] doubles = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            doubles[i] = values[i];
        }
        return doubles;
    }
}
