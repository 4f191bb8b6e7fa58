package slotledger.planner.internal;

import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.FleetPlanner;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.rules.MemoryRules;
import slotledger.solver.MilpSolver;

/** Plans with the active rules and the best of the solvers that run here. */
@Component
public final class DefaultFleetPlanner implements FleetPlanner {

    private final MemoryRules rules;
    private final List<MilpSolver> solvers;

    @Activate
    public DefaultFleetPlanner(
            @Reference MemoryRules rules,
            @Reference(service = MilpSolver.class) List<Map.Entry<Map<String, Object>, MilpSolver>> solvers) {
        this.rules = rules;
        this.solvers = Solvers.byRanking(solvers);
    }

    @Override
    public Plan plan(PlanRequest request, Progress progress) throws PlannerException {
        return new Planning(rules, Solvers.firstUsable(solvers)).plan(request, progress);
    }
}
