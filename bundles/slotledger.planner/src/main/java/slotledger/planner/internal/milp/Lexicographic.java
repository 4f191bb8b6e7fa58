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

/** Solves for several goals, each among the best for those before it. */
public final class Lexicographic {

    /**
     * One goal, to be made smallest.
     *
     * @param name      what is looked for, a short phrase for people
     * @param sum       what is made smallest
     * @param mostNodes limit of the search
     * @param measure   what a gap is measured against where that is more than the sum itself: few machines that are
     *                  missed are a small part of all
     */
    public record Goal(String name, Linear sum, int mostNodes, long measure) {

        /** A gap is measured against the sum itself. */
        public Goal(String name, Linear sum, int mostNodes) {
            this(name, sum, mostNodes, 0);
        }

        public Goal {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(sum, "sum");
        }
    }

    /**
     * The answer.
     *
     * @param values of all variables
     * @param steps  value and bound of each goal, in their order
     * @param safe   the bound of each goal that exact arithmetic alone proves
     * @param isCut  whether the user stopped the search
     */
    public record Answer(long[] values, List<MilpSolution> steps, List<Long> safe, boolean isCut) {
        public Answer {
            values = values.clone();
            steps = List.copyOf(steps);
            safe = List.copyOf(safe);
        }

        @Override
        public long[] values() {
            return values.clone();
        }
    }

    private final MilpSolver solver;

    public Lexicographic(MilpSolver solver) {
        this.solver = solver;
    }

    /**
     * Solves. Where the user cancels, the best values so far are the answer.
     *
     * @param start values that keep all rows
     */
    public Answer minimise(IntegerProgramme programme, List<Goal> goals, long[] start, Progress progress)
            throws SolverException {
        programme.broken(start).ifPresent(broken -> {
            throw new IllegalArgumentException("The values to begin with must keep the limit %s.".formatted(broken));
        });
        return new Run(programme, goals, start, progress).answer();
    }

    private final class Run {

        private final IntegerProgramme programme;
        private final List<Goal> goals;
        private final Progress progress;
        private final List<Row> reached = new ArrayList<>();
        private final List<MilpSolution> steps = new ArrayList<>();
        private final List<Long> safe = new ArrayList<>();
        private Box box;
        private long[] best;

        Run(IntegerProgramme programme, List<Goal> goals, long[] start, Progress progress) {
            this.programme = programme;
            this.goals = goals;
            this.progress = progress;
            box = new Box(programme);
            best = start;
        }

        Answer answer() throws SolverException {
            if (goals.size() > 1) {
                reachIdeal(goals.get(0), goals.get(1));
            }
            while (steps.size() < goals.size()) {
                Goal goal = goals.get(steps.size());
                Search.Found found = search(goal, box, Optional.of(best), reached).orElseThrow();
                keep(goal, found);
            }
            return new Answer(best, steps, safe, progress.isCancelled());
        }

        /**
         * Mostly the first goal can be had as good as each class by itself could have it. Then only the second goal
         * is looked for, among what has the first one so.
         */
        private void reachIdeal(Goal first, Goal second) throws SolverException {
            Columns columns = new Columns(programme, List.of());
            Bound bound = new Bound(columns, factors(first), box);
            bound.at(new long[columns.rows]);
            long ideal = bound.value();
            if (isProvenBeyond(columns, first, ideal)) {
                return;
            }
            Box narrow = box.copy();
            narrow.narrow(bound, ideal);
            Row row = new Row(first.name(), IntegerProgramme.NO_LOW, first.sum(), ideal, true);
            Optional<long[]> start = first.sum().of(best) == ideal ? Optional.of(best) : Optional.empty();
            Optional<Search.Found> found;
            try {
                found = search(second, narrow, start, List.of(row));
            } catch (SolverException e) {
                found = Optional.empty();
            }
            if (found.isPresent()) {
                box = narrow;
                keep(first, new Search.Found(found.get().values(), ideal, ideal, ideal));
                keep(second, found.get());
            }
        }

        /** Whether the relaxation of a goal, which takes a moment, already says that it can't be had so good. */
        private boolean isProvenBeyond(Columns columns, Goal goal, long ideal) throws SolverException {
            Optional<LinearSolver> linear = solver.linear();
            if (linear.isEmpty()) {
                return false;
            }
            try (Relaxation relaxation = new Relaxation(columns, factors(goal), box.copy(), linear.get())) {
                relaxation.solve(Optional.of(best), progress);
                return relaxation.bound().value() > ideal;
            }
        }

        private Optional<Search.Found> search(Goal goal, Box within, Optional<long[]> start, List<Row> rows)
                throws SolverException {
            progress.step(goal.name(), steps.size() / (double) goals.size());
            Search search = new Search(solver, programme, rows, progress);
            return goals.indexOf(goal) > 1
                    ? search.among(factors(goal), within, goal.mostNodes(), start.orElseThrow())
                    : search.minimise(factors(goal), within, goal.mostNodes(), goal.measure(), start);
        }

        private long[] factors(Goal goal) {
            long[] factors = new long[programme.size()];
            goal.sum().forEach((variable, factor) -> factors[variable] = factor);
            return factors;
        }

        private void keep(Goal goal, Search.Found found) {
            best = found.values();
            steps.add(new MilpSolution(found.values(), found.value(), found.bound()));
            safe.add(found.safe());
            reached.add(new Row(goal.name(), IntegerProgramme.NO_LOW, goal.sum(), found.value(), true));
        }
    }
}
