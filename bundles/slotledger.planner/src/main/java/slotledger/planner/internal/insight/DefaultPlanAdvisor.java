package slotledger.planner.internal.insight;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.task.Progress;
import slotledger.planner.Advice;
import slotledger.planner.PlanAdvisor;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Planning;
import slotledger.planner.internal.Solvers;
import slotledger.rules.MemoryRules;
import slotledger.solver.MilpSolver;

/** Advises with the active rules and the best of the solvers that run here. */
@Component
public final class DefaultPlanAdvisor implements PlanAdvisor {

    private final MemoryRules rules;
    private final Solvers solvers;

    @Activate
    public DefaultPlanAdvisor(
            @Reference MemoryRules rules,
            @Reference(service = MilpSolver.class) List<Map.Entry<Map<String, Object>, MilpSolver>> solvers) {
        this.rules = rules;
        this.solvers = Solvers.byRanking(solvers);
    }

    @Override
    public Advice advise(PlanRequest request, Progress progress) throws PlannerException {
        Solvers.Pick pick = solvers.pick(request.solver());
        return DefaultAdvice.of(new Planning(rules, pick.solver(), pick.passedOver()), request, progress);
    }

    @Override
    public BudgetCurve curve(PlanRequest request, int points, Consumer<BudgetCurve> soFar, Progress progress)
            throws PlannerException {
        Solvers.Pick pick = solvers.pick(request.solver());
        Planning planning = new Planning(rules, pick.solver(), pick.passedOver());
        return QuickAdvice.curve(planning, request, points, soFar, progress);
    }
}
