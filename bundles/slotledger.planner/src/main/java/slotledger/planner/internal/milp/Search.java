package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.LinearSolver;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * Looks for the smallest value of one goal. The relaxation gives a bound and says which columns can matter; integer
 * programmes over the columns that cost least more give values; and what can't be in anything better, by exact
 * arithmetic, is dropped. What is left at last is searched as a whole where it is small enough.
 */
final class Search {

    /** Columns beyond the cheapest of each class that a search for values looks at, one try after the other. */
    private static final int[] NEAR = {300, 3000};
    private static final int[] NEAR_NODES = {50, 200};
    /** More variables than these are not searched as a whole. */
    private static final int MOST_OPEN = 20_000;
    /** Programmes with fewer variables are searched as a whole; so are those of which one part is nearly all. */
    private static final int LEAST_SPLIT = 2000;
    private static final int FEW = 10;
    /** Rows that join parts matter little where they make less than this part of the bound. */
    private static final int LEAST_JOINED = 100;
    private static final int EASY = 1000;
    /** A goal that only breaks ties is not looked for among more variables than these. */
    private static final int MOST_TIED = 6000;
    /** Values are good enough for a fleet of more machines than these where the bound is within so small a part. */
    private static final long FEW_MACHINES = 5000;
    private static final long NEARLY_ALL = 20_000;
    private static final int LEAST_NODES = 20;
    private static final double NEARLY = 1e-6;

    /**
     * What was found.
     *
     * @param values by number of variable
     * @param value  of the goal
     * @param bound  no values have a smaller goal
     * @param safe   the part of the bound that exact arithmetic alone proves
     */
    record Found(long[] values, long value, long bound, long safe) {
    }

    private final MilpSolver solver;
    private final IntegerProgramme programme;
    private final List<Row> more;
    private final List<Row> rows;
    private final Progress progress;
    private boolean isExact = true;
    private long measure;

    Search(MilpSolver solver, IntegerProgramme programme, List<Row> more, Progress progress) {
        this.solver = solver;
        this.programme = programme;
        this.more = List.copyOf(more);
        this.progress = progress;
        rows = new ArrayList<>(programme.rows());
        rows.addAll(more);
    }

    /**
     * Searches.
     *
     * @param box     limits to begin with; narrowed to those that better values keep, and the ones found
     * @param measure what a gap is measured against where that is more than the goal
     * @param start   values inside the box, where some are known
     * @return empty where there are no values
     * @throws SolverException where none were found within the limits
     */
    Optional<Found> minimise(long[] cost, Box box, int mostNodes, long measure, Optional<long[]> start)
            throws SolverException {
        this.measure = measure;
        Columns columns = new Columns(programme, more);
        Parts parts = new Parts(columns, rows, box);
        isExact = Arrays.stream(columns.total).sum() <= FEW_MACHINES;
        return minimise(columns, cost, box, mostNodes, start, Long.MAX_VALUE,
                isSplit(parts, box.open()) ? Optional.of(parts) : Optional.empty());
    }

    private static boolean isSplit(Parts parts, int open) {
        return open > LEAST_SPLIT && parts.largest() < open - open / FEW;
    }

    /** Searches a part of what another searches; values of more than so much are of no use. */
    Optional<Found> part(Search whole, long[] cost, Box box, int mostNodes, Optional<long[]> start,
            Optional<Long> most) throws SolverException {
        isExact = whole.isExact;
        measure = whole.measure;
        return minimise(new Columns(programme, more), cost, box, mostNodes, start, most.orElse(Long.MAX_VALUE),
                Optional.empty());
    }

    private Optional<Found> minimise(Columns columns, long[] cost, Box box, int mostNodes, Optional<long[]> start,
            long most, Optional<Parts> parts) throws SolverException {
        Optional<LinearSolver> linear = solver.linear();
        if (linear.isEmpty()) {
            Bound bound = new Bound(columns, cost, box.copy());
            bound.at(new long[columns.rows]);
            return whole(cost, box, bound.value(), mostNodes, start);
        }
        try (Relaxation relaxation = new Relaxation(columns, cost, box.copy(), linear.get())) {
            relaxation.solve(start, progress);
            long safe = relaxation.bound().value();
            boolean isBroken = relaxation.isSolved() && !relaxation.isPossible();
            if (start.isEmpty() && isBroken || safe > most) {
                return Optional.empty();
            }
            if (most < Long.MAX_VALUE) {
                box.narrow(relaxation.bound(), most);
            }
            Optional<long[]> best = better(start, asItIs(relaxation, box), cost);
            int tried = 0;
            if (!isExact && !isGood(best, cost, safe)) {
                best = near(relaxation, cost, floor(relaxation, box), tried++, best);
            }
            long bound = safe;
            boolean isApart = safe - relaxation.apart() <= Math.abs(safe) / LEAST_JOINED;
            if (parts.isPresent() && isApart && !isGood(best, cost, safe)) {
                Optional<Split.Result> result =
                        new Split(this, solver, programme, rows, parts.get(), cost, box, mostNodes, progress)
                                .minimise(box, best);
                if (result.isEmpty()) {
                    return Optional.empty();
                }
                best = result.get().found();
                bound = Math.max(safe, result.get().bound());
                safe = Math.max(safe, result.get().safe());
                if (best.isPresent() && !result.get().isStuck()) {
                    return Optional.of(new Found(best.get(), value(cost, best.get()), bound, safe));
                }
            }
            for (int i = tried; i < NEAR.length && !progress.isCancelled(); i++) {
                if (isGood(best, cost, safe)) {
                    break;
                }
                best.ifPresent(values -> box.narrow(relaxation.bound(), value(cost, values)));
                if (box.open() > 2 * NEAR[i]) {
                    best = near(relaxation, cost, isExact ? box : floor(relaxation, box), i, best);
                }
            }
            if (best.isPresent()) {
                box.narrow(relaxation.bound(), value(cost, best.get()));
            }
            long proven = bound;
            return whole(cost, box, safe, mostNodes, best).map(found -> new Found(found.values(), found.value(),
                    Math.max(found.bound(), proven), found.safe()));
        }
    }

    /**
     * Searches among values that are equally good for the goals before, all of them inside the box; without a bound of
     * its own, because such a goal only breaks ties.
     */
    Optional<Found> among(long[] cost, Box box, int mostNodes, long[] start) throws SolverException {
        Columns columns = new Columns(programme, more);
        Bound bound = new Bound(columns, cost, box);
        Parts parts = new Parts(columns, rows, box);
        bound.at(new long[bound.columns().rows]);
        long value = value(cost, start);
        if (isSplit(parts, box.open())) {
            long[] found = new Ties(solver, programme, more, progress).minimise(cost, box, mostNodes, start);
            return Optional.of(new Found(found, value(cost, found), bound.value(), bound.value()));
        }
        return box.open() > MOST_TIED
                ? Optional.of(new Found(start, value, bound.value(), bound.value()))
                : whole(cost, box, bound.value(), mostNodes, Optional.of(start));
    }

    /** The values of the relaxation, where they happen to be whole and keep all rows. */
    private Optional<long[]> asItIs(Relaxation relaxation, Box box) {
        long[] values = new long[programme.size()];
        for (int variable = 0; variable < values.length; variable++) {
            values[variable] = Math.round(relaxation.value(variable));
            if (Math.abs(relaxation.value(variable) - values[variable]) > NEARLY) {
                return Optional.empty();
            }
        }
        boolean isKept = box.holds(values) && programme.broken(values).isEmpty()
                && more.stream().allMatch(row -> isKept(row, row.sum().of(values)));
        return isKept ? Optional.of(values) : Optional.empty();
    }

    private static boolean isKept(Row row, long sum) {
        return sum >= row.low() && sum <= row.high();
    }

    private static Optional<long[]> better(Optional<long[]> best, Optional<long[]> found, long[] cost) {
        return found.filter(values -> best.isEmpty() || value(cost, values) < value(cost, best.get())).or(() -> best);
    }

    /** Limits within which all that the relaxation decides in whole numbers stays; the few machines it splits don't. */
    private static Box floor(Relaxation relaxation, Box box) {
        Box floor = box.copy();
        Columns columns = relaxation.bound().columns();
        for (int group = 0; group < columns.groups; group++) {
            long left = columns.total[group];
            for (int i = columns.firstMember[group]; i < columns.firstMember[group + 1]; i++) {
                int variable = columns.members[i];
                long whole = (long) Math.floor(relaxation.value(variable) + NEARLY);
                floor.low[variable] = Math.max(box.low[variable], Math.min(box.high[variable], whole));
                left -= floor.low[variable];
            }
            for (int i = columns.firstMember[group]; i < columns.firstMember[group + 1]; i++) {
                int variable = columns.members[i];
                floor.high[variable] = Math.min(box.high[variable], floor.low[variable] + Math.max(0, left));
            }
        }
        return floor;
    }

    /** Values over the columns that cost least more than the cheapest of their class. */
    private Optional<long[]> near(Relaxation relaxation, long[] cost, Box box, int attempt, Optional<long[]> best) {
        Box near = box.copy();
        Bound bound = relaxation.bound();
        Columns columns = bound.columns();
        long[] over = Arrays.stream(columns.members)
                .filter(variable -> near.high[variable] > 0)
                .mapToLong(variable -> over(bound, variable))
                .sorted()
                .toArray();
        int most = Math.min(over.length - 1, columns.groups + NEAR[attempt]);
        long farthest = over.length == 0 ? 0 : over[most];
        for (int variable : columns.members) {
            if (over(bound, variable) > farthest && near.low[variable] == 0 && relaxation.value(variable) == 0) {
                near.high[variable] = 0;
            }
        }
        settle(columns, near);
        Optional<long[]> found;
        try {
            found = new Residual(programme, rows, cost, near)
                    .minimise(solver, NEAR_NODES[attempt], best, progress)
                    .map(MilpSolution::values);
        } catch (SolverException e) {
            found = Optional.empty();
        }
        return better(best, found, cost);
    }

    private static long over(Bound bound, int variable) {
        return bound.reduced(variable) - bound.reduced(bound.best(bound.columns().group[variable]));
    }

    /** A class with one population left gets it. */
    static void settle(Columns columns, Box box) {
        for (int group = 0; group < columns.groups; group++) {
            int last = -1;
            int open = 0;
            long left = columns.total[group];
            for (int i = columns.firstMember[group]; i < columns.firstMember[group + 1]; i++) {
                int variable = columns.members[i];
                if (box.low[variable] < box.high[variable]) {
                    open++;
                    last = variable;
                } else {
                    left -= box.low[variable];
                }
            }
            if (open == 1) {
                box.low[last] = Math.max(box.low[last], left);
                box.high[last] = Math.min(box.high[last], left);
            }
        }
    }

    /** Searches all that is left where that is small enough. */
    private Optional<Found> whole(long[] cost, Box box, long safe, int mostNodes, Optional<long[]> best)
            throws SolverException {
        settle(new Columns(programme, more), box);
        int open = box.open();
        boolean isDone = isGood(best, cost, safe);
        if (isDone || progress.isCancelled() || open > MOST_OPEN) {
            return Optional.of(best.map(values -> new Found(values, value(cost, values), safe, safe))
                    .orElseThrow(() -> new SolverException("No plan was found within the limits of the search.")));
        }
        int nodes = (int) Math.max(LEAST_NODES, (long) mostNodes * EASY / Math.max(EASY, open));
        Optional<MilpSolution> found;
        try {
            found = new Residual(programme, rows, cost, box).minimise(solver, nodes, best, progress);
        } catch (SolverException e) {
            if (best.isEmpty()) {
                throw e;
            }
            found = Optional.empty();
        }
        return found.map(each -> new Found(
                        each.values(), each.value(), Math.max(safe, each.bound()), safe))
                .or(() -> best.map(values -> new Found(values, value(cost, values), safe, safe)));
    }

    /** Whether the bound is reached, or so near that what is left is not worth searching. */
    private boolean isGood(Optional<long[]> best, long[] cost, long safe) {
        if (best.isEmpty()) {
            return false;
        }
        long value = value(cost, best.get());
        return value == safe || !isExact && value - safe <= Math.max(value, measure) / NEARLY_ALL;
    }

    /** Of the goal. */
    static long value(long[] cost, long[] values) {
        long sum = 0;
        for (int variable = 0; variable < values.length; variable++) {
            if (values[variable] != 0) {
                sum = Math.addExact(sum, Math.multiplyExact(cost[variable], values[variable]));
            }
        }
        return sum;
    }
}
