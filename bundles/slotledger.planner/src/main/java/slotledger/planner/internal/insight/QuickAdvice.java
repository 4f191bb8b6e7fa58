package slotledger.planner.internal.insight;

import java.util.Optional;
import java.util.function.Consumer;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.task.Progress;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.Planning;
import slotledger.solver.LinearSolver;

/** Answers that need no plan. */
public final class QuickAdvice {

    private QuickAdvice() {
    }

    /** See {@link slotledger.planner.PlanAdvisor}. */
    public static BudgetCurve curve(
            Planning planning,
            PlanRequest request,
            int points,
            Consumer<BudgetCurve> soFar,
            Progress progress) throws PlannerException {
        Optional<LinearSolver> linear = planning.solver().linear();
        if (linear.isEmpty()) {
            return DefaultAdvice.of(planning, request, progress).curve(points, soFar, progress);
        }
        Listed listed = planning.list(request, progress);
        return new CurveByPrices(planning.solver(), listed).sweep(linear.get(), points, soFar, progress);
    }
}
