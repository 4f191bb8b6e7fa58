package slotledger.planner;

import java.util.List;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.solver.text.ProgrammeForm;

/** Plans a fleet. Same request, same plan. */
public interface FleetPlanner {

    /**
     * The best plan, with proof of how far from the best it can be.
     *
     * @throws PlannerException where no plan can be made at all; the message says why and what to do
     */
    Plan plan(PlanRequest request, Progress progress) throws PlannerException;

    /**
     * The integer programme of the whole fleet as text, once for each goal in their order; in a later one the values
     * of the goals before it are rows. A general solver can be asked for the same optimum.
     *
     * @throws PlannerException where no plan can be made at all; the message says why and what to do
     */
    List<GoalText> goalTexts(PlanRequest request, ProgrammeForm form, Progress progress) throws PlannerException;
}
