package slotledger.planner;

import java.util.function.Consumer;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.task.Progress;

/** Plans a fleet and answers questions about the plan. Same request, same answers. */
public interface PlanAdvisor {

    /**
     * Plans as {@link FleetPlanner} does, and keeps what was found out about the fleet, so that each question takes a
     * search but no more listing.
     *
     * @throws PlannerException where no plan can be made at all
     */
    Advice advise(PlanRequest request, Progress progress) throws PlannerException;

    /**
     * Budget against weighted machines on target, without making a plan first: of each budget what a plan that was
     * found brings on target, and what no plan can exceed. Costs are those of the plans found, without a bound. Where
     * the solver has no relaxation to offer, each point takes a search.
     *
     * @param points about how many, at least 2
     * @param soFar  is told the curve after every point; the first one soon after all populations are listed
     * @throws PlannerException where no plan can be made at all
     */
    BudgetCurve curve(PlanRequest request, int points, Consumer<BudgetCurve> soFar, Progress progress)
            throws PlannerException;
}
