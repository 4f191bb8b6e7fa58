package slotledger.planner;

import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** Plans a fleet. Same request, same plan. */
public interface FleetPlanner {

    /**
     * The best plan, with proof of how far from the best it can be.
     *
     * @throws PlannerException where no plan can be made at all; the message says why and what to do
     */
    Plan plan(PlanRequest request, Progress progress) throws PlannerException;
}
