package slotledger.planner.internal.milp;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/** What is left of a programme where many variables have no choice any more. */
final class Residual {

    private final IntegerProgramme small = new IntegerProgramme();
    private final Linear goal = new Linear();
    private final int[] kept;
    private final long[] fixed;
    private final boolean isPossible;
    private long constant;

    /** All of a programme. */
    Residual(IntegerProgramme programme, List<Row> rows, long[] cost, Box box) {
        this(programme, rows, cost, box, IntStream.range(0, programme.size()).toArray());
    }

    /** Some variables with the rows that speak of them; all others have no choice. */
    Residual(IntegerProgramme programme, List<Row> rows, long[] cost, Box box, int[] variables) {
        kept = IntStream.of(variables).filter(variable -> box.low[variable] < box.high[variable]).toArray();
        fixed = box.low.clone();
        int[] place = new int[fixed.length];
        Arrays.fill(place, -1);
        boolean possible = true;
        for (int variable : variables) {
            possible &= box.low[variable] <= box.high[variable];
            if (box.low[variable] < box.high[variable]) {
                place[variable] = small.size();
                int named = variable;
                small.variables(1, box.low[variable], box.high[variable], programme.first(variable),
                        unused -> programme.name(named));
                goal.add(place[variable], cost[variable]);
            } else {
                constant = Math.addExact(constant, Math.multiplyExact(cost[variable], fixed[variable]));
            }
        }
        for (Row row : rows) {
            possible = possible && add(row, place);
        }
        isPossible = possible;
    }

    private boolean add(Row row, int[] place) {
        Linear sum = new Linear();
        long[] done = {0};
        row.sum().forEach((variable, factor) -> {
            if (place[variable] >= 0) {
                sum.add(place[variable], factor);
            } else {
                done[0] = Math.addExact(done[0], Math.multiplyExact(factor, fixed[variable]));
            }
        });
        if (sum.isEmpty()) {
            return done[0] >= row.low() && done[0] <= row.high();
        }
        if (row.low() == row.high()) {
            small.equal(row.name(), sum, Math.subtractExact(row.low(), done[0]));
            return true;
        }
        if (row.low() != IntegerProgramme.NO_LOW) {
            small.atLeast(row.name(), sum, Math.subtractExact(row.low(), done[0]));
        }
        if (row.high() != IntegerProgramme.NO_HIGH) {
            small.atMost(row.name(), sum, Math.subtractExact(row.high(), done[0]));
        }
        return true;
    }

    int size() {
        return kept.length;
    }

    /**
     * Solves what is left.
     *
     * @param start values of all variables of the whole programme; used where they fit
     * @return values of the whole programme; empty where there are none
     * @throws SolverException where none were found within the limits
     */
    Optional<MilpSolution> minimise(MilpSolver solver, int mostNodes, Optional<long[]> start, Progress progress)
            throws SolverException {
        if (!isPossible) {
            return Optional.empty();
        }
        if (kept.length == 0) {
            return Optional.of(new MilpSolution(fixed, constant, constant));
        }
        return solver.minimise(small, goal, mostNodes, start.flatMap(this::inside), progress)
                .map(found -> new MilpSolution(whole(found.values()), Math.addExact(found.value(), constant),
                        Math.addExact(found.bound(), constant)));
    }

    IntegerProgramme programme() {
        return small;
    }

    /** Factors of the goal by number of variable. */
    long[] cost() {
        long[] cost = new long[kept.length];
        goal.forEach((variable, factor) -> cost[variable] = factor);
        return cost;
    }

    /** What the variables without a choice cost. */
    long constant() {
        return constant;
    }

    boolean isPossible() {
        return isPossible;
    }

    /** Values of what is left, out of values of the whole programme; empty where they break a row. */
    Optional<long[]> inside(long[] values) {
        long[] some = new long[kept.length];
        for (int i = 0; i < some.length; i++) {
            some[i] = values[kept[i]];
        }
        return small.broken(some).isEmpty() ? Optional.of(some) : Optional.empty();
    }

    /** Values of the whole programme, out of values of what is left. */
    long[] whole(long[] some) {
        long[] values = fixed.clone();
        for (int i = 0; i < some.length; i++) {
            values[kept[i]] = some[i];
        }
        return values;
    }
}
