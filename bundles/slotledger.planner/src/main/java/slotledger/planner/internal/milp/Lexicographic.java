package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
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
     */
    public record Goal(String name, Linear sum, int mostNodes) {
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
     */
    public record Answer(long[] values, List<MilpSolution> steps) {
        public Answer {
            values = values.clone();
            steps = List.copyOf(steps);
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

    /** Solves; adds a row for each goal to the programme, so that it can't be used for anything else. */
    public Optional<Answer> minimise(
            IntegerProgramme programme, List<Goal> goals, Optional<long[]> start, Progress progress)
            throws SolverException {
        Optional<long[]> best = start;
        List<MilpSolution> steps = new ArrayList<>();
        for (Goal goal : goals) {
            progress.check();
            progress.step(goal.name(), steps.size() / (double) goals.size());
            Optional<MilpSolution> found =
                    solver.minimise(programme, goal.sum(), goal.mostNodes(), best, progress);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            steps.add(found.get());
            best = Optional.of(found.get().values());
            programme.atMost(goal.name(), goal.sum(), found.get().value());
        }
        return Optional.of(new Answer(best.orElseThrow(), steps));
    }
}
