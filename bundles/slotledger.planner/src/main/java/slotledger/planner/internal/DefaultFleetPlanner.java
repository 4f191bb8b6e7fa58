package slotledger.planner.internal;

import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.FleetPlanner;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.milp.ScipSolver;
import slotledger.rules.MemoryRules;

/** Plans with the active rules. */
@Component
public final class DefaultFleetPlanner implements FleetPlanner {

    private final Planning planning;

    @Activate
    public DefaultFleetPlanner(@Reference MemoryRules rules) {
        planning = new Planning(rules, new ScipSolver());
    }

    @Override
    public Plan plan(PlanRequest request, Progress progress) throws PlannerException {
        return planning.plan(request, progress);
    }
}
