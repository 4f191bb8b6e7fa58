package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.milp.Lexicographic.Goal;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/** Solves a programme for several goals where no values are known to begin with, and perhaps there are none. */
public final class FreshSearch {

    private FreshSearch() {
    }

    /**
     * One solution for each goal, each among the best for those before it; empty where no values keep all rows. Adds
     * rows to the programme, so that it can't be used for anything else.
     */
    public static Optional<List<MilpSolution>> minimise(
            MilpSolver solver, IntegerProgramme programme, List<Goal> goals, Progress progress)
            throws PlannerException {
        Optional<long[]> best = Optional.empty();
        List<MilpSolution> steps = new ArrayList<>();
        try {
            for (Goal goal : goals) {
                progress.check();
                Optional<MilpSolution> found =
                        solver.minimise(programme, goal.sum(), goal.mostNodes(), best, progress);
                if (found.isEmpty()) {
                    return Optional.empty();
                }
                steps.add(found.get());
                best = Optional.of(found.get().values());
                programme.atMost(goal.name(), goal.sum(), found.get().value());
            }
            return Optional.of(steps);
        } catch (SolverException e) {
            throw new PlannerException(e.getMessage(), e);
        }
    }
}
