package slotledger.planner.internal.milp;

import java.util.Arrays;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.LinearSolver;
import slotledger.solver.LinearSolver.Outcome;
import slotledger.solver.SolverException;

/**
 * The relaxation over some of the columns. Every row may be broken at a price far above all costs, so that there are
 * always values.
 */
final class Master implements AutoCloseable {

    private static final int ABSENT = -1;
    private static final double FAR_ABOVE = 100;
    private static final double NEAR = 1e-6;

    private final Columns columns;
    private final long[] cost;
    private final Box box;
    private final LinearSolver.Session session;
    private final int[] place;
    private int elastics;
    private double[] values = {};
    private double[] prices = {};

    Master(Columns columns, long[] cost, Box box, LinearSolver solver) throws SolverException {
        this.columns = columns;
        this.cost = cost;
        this.box = box;
        double[] lows = new double[columns.rows + columns.groups];
        double[] highs = new double[lows.length];
        for (int row = 0; row < columns.rows; row++) {
            lows[row] = columns.rowLow[row] == IntegerProgramme.NO_LOW ? LinearSolver.NO_LOW : columns.rowLow[row];
            highs[row] = columns.rowHigh[row] == IntegerProgramme.NO_HIGH
                    ? LinearSolver.NO_HIGH : columns.rowHigh[row];
        }
        for (int group = 0; group < columns.groups; group++) {
            lows[columns.rows + group] = columns.total[group];
            highs[columns.rows + group] = columns.total[group];
        }
        session = solver.open(lows, highs);
        place = new int[columns.size];
        Arrays.fill(place, ABSENT);
        addElastics(lows, highs);
        for (int variable : columns.single) {
            add(variable);
        }
    }

    private void addElastics(double[] lows, double[] highs) {
        double[] largest = new double[columns.rows];
        for (int i = 0; i < columns.row.length; i++) {
            largest[columns.row[i]] = Math.max(largest[columns.row[i]], Math.abs(columns.factor[i]));
        }
        double dearest = 1;
        for (long each : cost) {
            dearest = Math.max(dearest, Math.abs(each));
        }
        for (int row = 0; row < columns.rows; row++) {
            double penalty = dearest * FAR_ABOVE / Math.max(1, Math.sqrt(largest[row]));
            if (lows[row] != LinearSolver.NO_LOW) {
                session.add(0, LinearSolver.NO_HIGH, penalty, new int[] {row}, new double[] {1});
                elastics++;
            }
            if (highs[row] != LinearSolver.NO_HIGH) {
                session.add(0, LinearSolver.NO_HIGH, penalty, new int[] {row}, new double[] {-1});
                elastics++;
            }
        }
    }

    /** Adds a column; whether it was absent. */
    boolean add(int variable) {
        if (place[variable] != ABSENT || box.high[variable] < box.low[variable]) {
            return false;
        }
        int first = columns.firstTerm[variable];
        int terms = columns.firstTerm[variable + 1] - first;
        boolean isShared = columns.group[variable] != Columns.NO_GROUP;
        int[] rows = Arrays.copyOf(Arrays.copyOfRange(columns.row, first, first + terms), terms + (isShared ? 1 : 0));
        double[] factors = new double[rows.length];
        for (int i = 0; i < terms; i++) {
            factors[i] = columns.factor[first + i];
        }
        double high = box.high[variable];
        if (isShared) {
            rows[terms] = columns.rows + columns.group[variable];
            factors[terms] = 1;
            high = high >= columns.total[columns.group[variable]] ? LinearSolver.NO_HIGH : high;
        }
        place[variable] = session.add(box.low[variable], high, cost[variable], rows, factors);
        return true;
    }

    Outcome solve() throws SolverException {
        Outcome outcome = session.solve();
        if (outcome == Outcome.LEAST) {
            values = session.values();
            prices = session.prices();
        }
        return outcome;
    }

    /** Whether a row had to be broken. */
    boolean isBroken() {
        for (int i = 0; i < elastics; i++) {
            if (values[i] > NEAR) {
                return true;
            }
        }
        return false;
    }

    /** Of the last solution; a column added since then is not in it. */
    double value(int variable) {
        return place[variable] == ABSENT || place[variable] >= values.length ? 0 : values[place[variable]];
    }

    double goal() {
        double sum = 0;
        for (int variable = 0; variable < place.length; variable++) {
            if (place[variable] != ABSENT) {
                sum += values[place[variable]] * cost[variable];
            }
        }
        return sum;
    }

    /** By row that links groups. */
    double[] prices() {
        return Arrays.copyOf(prices, columns.rows);
    }

    @Override
    public void close() {
        session.close();
    }
}
