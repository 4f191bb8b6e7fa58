package slotledger.planner;

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
}
