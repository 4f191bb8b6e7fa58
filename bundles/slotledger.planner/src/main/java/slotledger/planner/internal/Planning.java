package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.FleetClasses;
import slotledger.planner.internal.choice.FleetOptions;
import slotledger.planner.internal.choice.MachineClass;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.choice.UsableOffers;
import slotledger.planner.internal.milp.Lexicographic;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.model.PlanModel;
import slotledger.planner.internal.work.Expansion;
import slotledger.planner.internal.work.PlanWriter;
import slotledger.planner.internal.work.Purchases;
import slotledger.rules.MemoryRules;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/** Strings the steps of planning together: classes, populations, programme, single machines, plan, audit. */
public final class Planning {

    private final MemoryRules rules;
    private final MilpSolver solver;

    public Planning(MemoryRules rules, MilpSolver solver) {
        this.rules = Objects.requireNonNull(rules, "rules");
        this.solver = Objects.requireNonNull(solver, "solver");
    }

    /** The best plan; see {@link slotledger.planner.FleetPlanner}. */
    public Plan plan(PlanRequest request, Progress progress) throws PlannerException {
        Currencies.check(request.policy());
        progress.step("grouping machines into classes", 0);
        UsableOffers usable = UsableOffers.of(request);
        List<MachineClass> classes = FleetClasses.of(request);
        Stock stock = Stock.of(usable.offers(), request.shelf(), classes);
        FleetOptions fleet = new FleetOptions(rules, request.policy(), stock, classes);
        List<Options> options = fleet.list(progress);

        PlanModel model = new PlanModel(request, stock, options);
        Lexicographic.Answer answer = solve(model, progress);
        Choice choice = model.choice(answer.values());

        progress.step("naming every module's way", 0);
        Expansion expansion = Expansion.of(request, stock, choice, fleet.boards());
        Purchases purchases = Purchases.of(stock, choice, expansion, request.policy().sparePercent());
        List<Leftover> leftovers = new ArrayList<>(expansion.leftovers());
        leftovers.addAll(purchases.leftovers());
        List<Finding> remarks = new ArrayList<>(usable.remarks());
        remarks.addAll(Remarks.of(fleet.boards(), stock, options, expansion, purchases.lines()));

        Plan plan = new PlanWriter(request, stock, expansion, purchases)
                .write(leftovers, new PlanWriter.Proof(
                        answer.steps().get(0), answer.steps().get(1), solver.name(), FleetOptions.limits()), remarks);
        progress.step("checking the plan", 0);
        new PlanAudit(request, rules).check(plan);
        progress.step("plan checked", 1);
        return plan;
    }

    private Lexicographic.Answer solve(PlanModel model, Progress progress) throws PlannerException {
        try {
            return new Lexicographic(solver)
                    .minimise(model.programme(), model.goals(), Optional.of(model.nothingDone()), progress)
                    .orElseThrow(() -> new IllegalStateException("The programme must allow to do nothing."));
        } catch (SolverException e) {
            throw new PlannerException(e.getMessage(), e);
        }
    }
}
