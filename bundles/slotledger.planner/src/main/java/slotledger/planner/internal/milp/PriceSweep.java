package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;
import slotledger.solver.LinearSolver;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * Money against what is missed. What is missed is given a price, and the relaxation looks for the least of money and
 * priced misses together; it begins with the columns that were of use at the prices before.
 * Exact arithmetic bounds that sum, so that
 * each price says of every amount of money at once how much must be missed with it.
 */
public final class PriceSweep {

    private static final double NEAR = 1e-6;
    private static final int NODES = 30;

    /**
     * What one price says.
     *
     * @param price  of one unit missed, in units of money
     * @param least  no values that keep all rows have less money + price * missed
     * @param money  of the relaxation, with fractions
     * @param missed of the relaxation, with fractions
     * @param values of the relaxation, by variable
     */
    public record Sample(long price, long least, double money, double missed, double[] values) {

        public Sample {
            Objects.requireNonNull(values, "values");
        }

        /** The least that must be missed with so much money. */
        public long missedWith(long budget) {
            return price == 0 ? Long.MIN_VALUE : -Math.floorDiv(Math.subtractExact(budget, least), price);
        }
    }

    private final MilpSolver solver;
    private final IntegerProgramme programme;
    private final Linear money;
    private final Linear missed;
    private final Columns columns;
    private final Box box;
    private final LinearSolver linear;
    /** Columns that were of use so far: above zero. */
    private final long[] known;

    /**
     * A sweep.
     *
     * @param money  not to be above a budget
     * @param missed what has a price
     */
    public PriceSweep(
            MilpSolver solver,
            LinearSolver linear,
            IntegerProgramme programme,
            Linear money,
            Linear missed) {
        this.solver = solver;
        this.programme = programme;
        this.money = money;
        this.missed = missed;
        columns = new Columns(programme, List.of());
        box = new Box(programme);
        this.linear = linear;
        known = new long[programme.size()];
        for (int group = 0; group < columns.groups; group++) {
            known[columns.members[columns.firstMember[group]]] = 1;
        }
    }

    private long[] cost(long price) {
        long[] cost = new long[programme.size()];
        money.forEach((variable, factor) -> cost[variable] = factor);
        missed.forEach((variable, factor) ->
                cost[variable] = Math.addExact(cost[variable], Math.multiplyExact(price, factor)));
        return cost;
    }

    /** Solves the relaxation with this price. */
    public Sample at(long price, Progress progress) throws SolverException {
        try (Relaxation relaxation = new Relaxation(columns, cost(price), box.copy(), linear)) {
            relaxation.solve(Optional.of(known), progress);
            double[] values = new double[programme.size()];
            for (int variable = 0; variable < values.length; variable++) {
                values[variable] = relaxation.value(variable);
                known[variable] |= values[variable] > NEAR ? 1 : 0;
            }
            return new Sample(price, relaxation.bound().value(), sum(money, values), sum(missed, values), values);
        }
    }

    private static double sum(Linear linear, double[] values) {
        double[] sum = {0};
        linear.forEach((variable, factor) -> sum[0] += factor * values[variable]);
        return sum[0];
    }

    /**
     * Whole values near those of some samples, within a budget. What all of them agree on in whole numbers stays; the
     * rest may change among what one of them uses, or be left as it is.
     *
     * @param known values within the budget; they may be kept, or mixed with the others
     * @param price of a unit missed; high where little must be missed, whatever it costs
     */
    public Optional<long[]> round(
            List<Sample> near, Optional<long[]> known, long budget, long price, Progress progress) {
        Box narrow = box.copy();
        for (int group = 0; group < columns.groups; group++) {
            int unchanged = columns.members[columns.firstMember[group]];
            for (int i = columns.firstMember[group]; i < columns.firstMember[group + 1]; i++) {
                int variable = columns.members[i];
                double least = near.stream().mapToDouble(each -> each.values()[variable]).min().orElse(0);
                double most = near.stream().mapToDouble(each -> each.values()[variable]).max().orElse(0);
                long kept = known.map(values -> values[variable]).orElse((long) (least + NEAR));
                narrow.low[variable] = Math.max(narrow.low[variable], Math.min(kept, (long) (least + NEAR)));
                boolean isUsed = most > NEAR || kept > 0 || variable == unchanged;
                narrow.high[variable] = isUsed ? narrow.high[variable] : narrow.low[variable];
            }
        }
        Search.settle(columns, narrow);
        List<Row> rows = new ArrayList<>(programme.rows());
        rows.add(new Row("budget", IntegerProgramme.NO_LOW, money, budget));
        try {
            return new Residual(programme, rows, cost(price), narrow).minimise(solver, NODES, known, progress)
                    .map(MilpSolution::values);
        } catch (SolverException within) {
            // So few nodes may well bring nothing; other budgets still have their values.
            return Optional.empty();
        }
    }
}
