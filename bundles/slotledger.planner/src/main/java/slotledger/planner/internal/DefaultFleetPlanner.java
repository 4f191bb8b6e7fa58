package slotledger.planner.internal;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.FleetPlanner;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.milp.CpSatSolver;
import slotledger.rules.MemoryRules;

/** Plans with the active rules. */
@Component
public final class DefaultFleetPlanner implements FleetPlanner {

    /** Units of counted work a goal, about a second each; a fleet of 600 machines needs a few. */
    private static final double MOST_WORK = 120;

    private final Planning planning;

    @Activate
    public DefaultFleetPlanner(@Reference MemoryRules rules) {
        planning = new Planning(rules, new CpSatSolver(MOST_WORK));
    }

    @Override
    public Plan plan(PlanRequest request, Progress progress) throws PlannerException {
        return planning.plan(request, progress);
    }
}
