package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Insights;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.WithoutOffer;
import slotledger.model.task.Progress;
import slotledger.planner.Advice;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.Planning;
import slotledger.planner.internal.Solved;
import slotledger.planner.internal.why.Freeing;

/** Keeps what was listed and decided for a plan, and hands each question to the class that answers it. */
public final class DefaultAdvice implements Advice {

    /** More steps than these tell a reader nothing that the curve doesn't. */
    private static final int MORE = 4;
    private static final int LESS = 3;

    private final Planning planning;
    private final WhatIf whatIf;
    private final Listed listed;
    private final Solved solved;
    private final Plan plan;

    private DefaultAdvice(Planning planning, Listed listed, Solved solved, Plan plan) {
        this.planning = planning;
        this.whatIf = new WhatIf(planning);
        this.listed = listed;
        this.solved = solved;
        this.plan = plan;
    }

    /** Plans. */
    public static DefaultAdvice of(Planning planning, PlanRequest request, Progress progress) throws PlannerException {
        Listed listed = planning.list(request, progress);
        Solved solved = planning.solve(listed, progress);
        return new DefaultAdvice(planning, listed, solved, planning.write(listed, solved, progress));
    }

    @Override
    public Plan plan() {
        return plan;
    }

    @Override
    public WithoutOffer without(String offer, Progress progress) throws PlannerException {
        Figures figures = whatIf.ask(listed.withoutOffer(offer), progress)
                .orElseThrow(() -> new IllegalStateException("The programme must allow to do nothing."))
                .figures();
        return new WithoutOffer(offer, figures);
    }

    @Override
    public List<BudgetStep> more(int most, Progress progress) throws PlannerException {
        return steps().more(most, progress);
    }

    @Override
    public List<BudgetStep> less(int most, Progress progress) throws PlannerException {
        return steps().less(most, progress);
    }

    private BudgetSteps steps() {
        return new BudgetSteps(whatIf, planning.solver(), listed, solved.missed().value(), new OnTarget(plan));
    }

    @Override
    public List<Alternative> alternatives(AssetTag machine, Progress progress) throws PlannerException {
        MachinePlan planned = plan.find(machine).orElseThrow(() -> new PlannerException(
                "No machine with the asset tag %s is planned. Look it up in the inventory.".formatted(machine)));
        Freeing freeing =
                new Freeing(listed.request(), listed.stock(), solved.choice(), planning.solver());
        return new Populations(whatIf, listed, freeing, Figures.of(plan), plan.spending().payable())
                .of(planned, progress);
    }

    @Override
    public BudgetCurve curve(int points, Consumer<BudgetCurve> soFar, Progress progress) throws PlannerException {
        return new CurveSweep(whatIf, listed).sweep(Figures.of(plan), points, soFar, progress);
    }

    @Override
    public Plan withInsights(Progress progress) throws PlannerException {
        List<WithoutOffer> without = new ArrayList<>();
        for (Purchase line : plan.purchases()) {
            progress.step("doing without " + line.offer().id(), without.size() / (double) plan.purchases().size());
            without.add(without(line.offer().id(), progress));
        }
        progress.step("the next euro", 0);
        List<BudgetStep> less = less(LESS, progress);
        List<BudgetStep> more = more(MORE, progress);
        return plan.withInsights(new Insights(plan.insights().alone(), without, less, more,
                new ChoicePrices(planning, listed.request()).all(progress)));
    }
}
