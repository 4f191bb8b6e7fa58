package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.finding.Finding;
import slotledger.model.plan.Insights;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.planner.GoalText;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.alone.MachineByMachine;
import slotledger.planner.internal.choice.FleetOptions;
import slotledger.planner.internal.milp.Lexicographic;
import slotledger.planner.internal.model.PlanModel;
import slotledger.planner.internal.why.Freeing;
import slotledger.planner.internal.work.Expansion;
import slotledger.planner.internal.work.PlanWriter;
import slotledger.planner.internal.work.Purchases;
import slotledger.planner.internal.work.Worth;
import slotledger.rules.MemoryRules;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;
import slotledger.solver.text.ProgrammeForm;

/** Strings the steps of planning together: classes, populations, programme, single machines, plan, audit. */
public final class Planning {

    private static final int START_NODES = 1_000;

    private final MemoryRules rules;
    private final MilpSolver solver;
    private final List<String> passedOver;

    public Planning(MemoryRules rules, MilpSolver solver) {
        this(rules, solver, List.of());
    }

    /**
     * Planning.
     *
     * @param passedOver why better solvers can't be used, a sentence each
     */
    public Planning(MemoryRules rules, MilpSolver solver, List<String> passedOver) {
        this.rules = Objects.requireNonNull(rules, "rules");
        this.solver = Objects.requireNonNull(solver, "solver");
        this.passedOver = List.copyOf(passedOver);
    }

    /** The best plan; see {@link slotledger.planner.FleetPlanner}. */
    public Plan plan(PlanRequest request, Progress progress) throws PlannerException {
        Listed listed = list(request, progress);
        Solved solved = solve(listed, progress);
        List<Pin> missed = PinCheck.missed(request, solved.choice());
        if (!missed.isEmpty()) {
            throw PinCheck.refusal(missed, whyMissed(listed, progress));
        }
        return write(listed, solved, progress);
    }

    /** Asks whether they could all be kept with more money, or with more machines opened. */
    private String whyMissed(Listed listed, Progress progress) throws PlannerException {
        PlanRequest request = listed.request();
        Choices choices = request.choices();
        Listed free = listed.with(request.policy(), new Choices(
                choices.pins(), choices.tastes(), choices.uniform(), OptionalInt.empty()));
        if (PinCheck.missed(request, solve(free, progress).choice()).isEmpty()) {
            return "at most %d machines may be opened".formatted(choices.mostOpened().orElse(0));
        }
        Listed rich = free.with(request.policy().withoutBudgets(), free.request().choices());
        return PinCheck.missed(request, solve(rich, progress).choice()).isEmpty()
                ? "the budget does not reach" : "the modules they want can't be had in such numbers";
    }

    /** See {@link slotledger.planner.FleetPlanner}. */
    public List<GoalText> goalTexts(PlanRequest request, ProgrammeForm form, Progress progress)
            throws PlannerException {
        Listed listed = list(request, progress);
        try {
            return GoalTexts.of(new PlanModel(request, listed.stock(), listed.options()), solver, form, progress);
        } catch (SolverException e) {
            throw new PlannerException(e.getMessage(), e);
        }
    }

    /** First step: what can be done. */
    public Listed list(PlanRequest request, Progress progress) throws PlannerException {
        return Listed.of(request, rules, progress);
    }

    /** Second step: what is best. */
    public Solved solve(Listed listed, Progress progress) throws PlannerException {
        return search(listed, progress)
                .orElseThrow(() -> new IllegalStateException("The programme must allow to do nothing."));
    }

    /** What is best with other money, offers or given populations; empty where nothing is allowed. */
    public Optional<Solved> search(Listed listed, Progress progress) throws PlannerException {
        PlanModel model = new PlanModel(listed.request(), listed.stock(), listed.options());
        try {
            Optional<long[]> start = start(model, progress);
            if (start.isEmpty()) {
                return Optional.empty();
            }
            Lexicographic.Answer answer = new Lexicographic(solver)
                    .minimise(model.programme(), model.goals(), start.get(), progress);
            return Optional.of(new Solved(model.choice(answer.values()), answer.steps().get(0), answer.steps().get(1),
                    answer.safe().get(0), answer.safe().get(1), solver.name(), answer.isCut()));
        } catch (SolverException e) {
            throw new PlannerException(e.getMessage(), e);
        }
    }

    /** Values that keep all rows: nothing is done, or where that is not allowed whatever is. */
    private Optional<long[]> start(PlanModel model, Progress progress) throws SolverException {
        long[] nothing = model.nothingDone();
        return model.programme().broken(nothing).isEmpty() ? Optional.of(nothing)
                : solver.minimise(model.programme(), model.missed(), START_NODES, Optional.empty(), progress)
                        .map(MilpSolution::values);
    }

    /** What carrying out the decisions costs, to the cent. */
    public Spending spending(Listed listed, Solved solved) {
        PlanRequest request = listed.request();
        Expansion expansion = Expansion.of(request, listed.stock(), solved.choice(), listed.boards());
        Purchases purchases =
                Purchases.of(listed.stock(), solved.choice(), expansion, request.policy());
        return new PlanWriter(request, listed.stock(), expansion, purchases).spending();
    }

    public MilpSolver solver() {
        return solver;
    }

    /** Last step: single machines and modules, checked. */
    public Plan write(Listed listed, Solved solved, Progress progress) throws PlannerException {
        PlanRequest request = listed.request();
        progress.step("naming every module's way", 0);
        Expansion expansion = Expansion.of(request, listed.stock(), solved.choice(), listed.boards());
        Purchases purchases =
                Purchases.of(listed.stock(), solved.choice(), expansion, request.policy());
        List<Leftover> leftovers = new ArrayList<>(expansion.leftovers());
        leftovers.addAll(purchases.leftovers());
        List<Finding> remarks = new ArrayList<>(listed.usable().remarks());
        remarks.addAll(RoomRemarks.of(solved.choice()));
        passedOver.forEach(why -> remarks.add(Remarks.ofSolver(solver.name(), why)));
        remarks.addAll(Remarks.of(
                listed.boards(), listed.stock(), listed.options(), expansion, purchases.lines()));
        remarks.addAll(PurchaseRemarks.of(request, purchases.lines()));

        Plan plan = new PlanWriter(request, listed.stock(), expansion, purchases)
                .write(new Worth(listed.stock().offers()).of(leftovers), new PlanWriter.Proof(
                        solved.missed(), solved.cost(), solved.missedSafe(), solved.costSafe(), solved.solver(),
                        FleetOptions.limits(request), solved.isCut()),
                        new Freeing(request, listed.stock(), solved.choice(), solver), remarks);
        Insights insights = new Insights(
                Optional.of(MachineByMachine.of(request, listed.stock(), listed.options())));
        progress.step("checking the plan", 0);
        new PlanAudit(request, rules).check(plan);
        progress.step("plan checked", 1);
        return plan.withInsights(insights);
    }
}
