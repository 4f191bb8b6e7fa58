package slotledger.planner.internal.milp;

import java.math.BigInteger;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.solver.LinearSolver;
import slotledger.solver.SolverException;

/**
 * Solves the relaxation by adding columns: the prices of the rows say which populations could make the goal smaller.
 * Prices are drawn towards the best ones so far, because those of a few columns swing wildly.
 */
final class Relaxation implements AutoCloseable {

    /** How much of the best prices so far goes into the prices asked next. */
    private static final double DRAWN = 0.6;
    private static final double CLOSE = 1e-9;
    private static final double HALF = 0.5;
    private static final int MOST_ROUNDS = 1000;

    private final Columns columns;
    private final Bound bound;
    private final Master master;
    private long[] bestPrices;
    private BigInteger best;
    private boolean isSolved;

    Relaxation(Columns columns, long[] cost, Box box, LinearSolver solver) throws SolverException {
        this.columns = columns;
        bound = new Bound(columns, cost, box);
        master = new Master(columns, cost, box, solver);
        bestPrices = new long[columns.rows];
        best = bound.at(bestPrices);
    }

    /** Adds columns until none helps; stops early where the user cancels. The bound is left at the best prices. */
    void solve(Optional<long[]> start, Progress progress) throws SolverException {
        for (int group = 0; group < columns.groups; group++) {
            master.add(bound.best(group));
        }
        start.ifPresent(values -> {
            for (int variable : columns.members) {
                if (values[variable] > 0) {
                    master.add(variable);
                }
            }
        });
        for (int round = 0; round < MOST_ROUNDS && !isSolved && !progress.isCancelled(); round++) {
            if (master.solve() != LinearSolver.Outcome.LEAST) {
                break;
            }
            double goal = master.goal();
            double[] prices = master.prices();
            isSolved = isClose(goal) && !master.isBroken() || !ask(drawn(prices)) && !ask(prices);
        }
        bound.at(bestPrices);
    }

    private boolean isClose(double goal) {
        double here = best.doubleValue() * bound.unit();
        return goal - here <= Math.max(HALF * HALF, Math.abs(goal) * CLOSE);
    }

    private double[] drawn(double[] prices) {
        double[] drawn = new double[prices.length];
        for (int row = 0; row < drawn.length; row++) {
            drawn[row] = DRAWN * bestPrices[row] * bound.unit() + (1 - DRAWN) * prices[row];
        }
        return drawn;
    }

    /** Asks which columns help at these prices; whether there is a new one. */
    private boolean ask(double[] asked) {
        long[] rounded = bound.round(asked);
        BigInteger here = bound.at(rounded);
        if (here.compareTo(best) > 0) {
            best = here;
            bestPrices = rounded;
        }
        boolean isNew = false;
        for (int group = 0; group < columns.groups; group++) {
            isNew |= master.add(bound.best(group));
        }
        return isNew;
    }

    /** The bound where rows that join parts are left out; the bound is left at the best prices. */
    long apart() {
        long[] prices = bestPrices.clone();
        for (int row = 0; row < prices.length; row++) {
            prices[row] = columns.joins[row] ? 0 : prices[row];
        }
        bound.at(prices);
        long apart = bound.value();
        bound.at(bestPrices);
        return apart;
    }

    boolean isPossible() {
        return !master.isBroken();
    }

    boolean isSolved() {
        return isSolved;
    }

    Bound bound() {
        return bound;
    }

    /** Of a variable, with fractions. */
    double value(int variable) {
        return master.value(variable);
    }

    @Override
    public void close() {
        master.close();
    }
}
