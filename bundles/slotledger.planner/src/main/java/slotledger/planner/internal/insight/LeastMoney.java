package slotledger.planner.internal.insight;

import java.util.List;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.milp.Lexicographic.Goal;
import slotledger.planner.internal.model.PlanModel;
import slotledger.planner.internal.why.FreshSearch;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;

/** The smallest budget with which at most so many weighted machines stay below target though they could be helped. */
final class LeastMoney {

    private static final int NODES = 10_000;

    private final MilpSolver solver;
    private final Listed listed;

    /** Whatever the budget of the request is, it is left out; those of cost centres hold. */
    LeastMoney(MilpSolver solver, Listed listed) {
        this.solver = solver;
        this.listed = listed.withBudget(Optional.empty());
    }

    /** Minor units, with a bound; empty where no money brings so many on target. */
    Optional<MilpSolution> forMissing(long most, Progress progress) throws PlannerException {
        if (most < 0) {
            return Optional.empty();
        }
        PlanModel model = new PlanModel(listed.request(), listed.stock(), listed.options());
        model.programme().atMost("weighted machines below target", model.missed(), most);
        Goal goal = new Goal("looking for the smallest budget", model.againstBudget(), NODES);
        return FreshSearch.minimise(solver, model.programme(), List.of(goal), progress).map(steps -> steps.get(0));
    }
}
