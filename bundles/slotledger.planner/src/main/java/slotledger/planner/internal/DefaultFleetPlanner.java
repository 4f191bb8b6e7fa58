package slotledger.planner.internal;

import java.util.List;
import java.util.Map;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.FleetPlanner;
import slotledger.planner.GoalText;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.rules.MemoryRules;
import slotledger.solver.MilpSolver;
import slotledger.solver.text.ProgrammeForm;

/** Plans with the active rules and the best of the solvers that run here. */
@Component
public final class DefaultFleetPlanner implements FleetPlanner {

    private final MemoryRules rules;
    private final Solvers solvers;

    @Activate
    public DefaultFleetPlanner(
            @Reference MemoryRules rules,
            @Reference(service = MilpSolver.class) List<Map.Entry<Map<String, Object>, MilpSolver>> solvers) {
        this.rules = rules;
        this.solvers = Solvers.byRanking(solvers);
    }

    @Override
    public Plan plan(PlanRequest request, Progress progress) throws PlannerException {
        Solvers.Pick pick = solvers.pick(request.solver());
        return new Planning(rules, pick.solver(), pick.passedOver()).plan(request, progress);
    }

    @Override
    public List<GoalText> goalTexts(PlanRequest request, ProgrammeForm form, Progress progress)
            throws PlannerException {
        return new Planning(rules, solvers.pick(request.solver()).solver()).goalTexts(request, form, progress);
    }
}
