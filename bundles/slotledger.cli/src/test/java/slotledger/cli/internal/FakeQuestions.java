package slotledger.cli.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.app.PlanQuestions;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Insights;
import slotledger.model.plan.Plan;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.plan.WithoutOffer;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;

/** Answers with made-up figures. */
final class FakeQuestions implements PlanQuestions {

    private final Plan plan;

    FakeQuestions(Plan plan) {
        this.plan = plan;
    }

    private Money money(long minor) {
        return new Money(minor, plan.policy().currency());
    }

    private Figures figures(long onTarget, long bound, long cost) {
        return new Figures(onTarget, onTarget, bound, money(cost), money(cost), money(cost));
    }

    @Override
    public Plan plan() {
        return plan;
    }

    @Override
    public Plan withInsights(Progress progress) {
        return plan.withInsights(new Insights(Optional.empty(), List.of(without("S/P1", progress)),
                less(1, progress), more(1, progress),
                List.of(new WithoutChoice("to open at most 3 machines", figures(1, 1, 900)))));
    }

    @Override
    public WithoutOffer without(String offer, Progress progress) {
        return new WithoutOffer(offer, figures(0, 0, 500));
    }

    @Override
    public List<BudgetStep> more(int most, Progress progress) {
        return List.of(new BudgetStep(money(2000), figures(1, 1, 2000), List.of(new AssetTag("A1")), List.of(), true));
    }

    @Override
    public List<BudgetStep> less(int most, Progress progress) {
        return List.of(new BudgetStep(money(0), figures(0, 0, 0), List.of(), List.of(), true));
    }

    @Override
    public List<Alternative> alternatives(AssetTag machine, Progress progress) {
        throw new AssertionError("not asked here");
    }

    @Override
    public BudgetCurve curve(int points, Consumer<BudgetCurve> soFar, Progress progress) {
        soFar.accept(new BudgetCurve(
                List.of(new BudgetCurve.Point(money(1000), figures(2, 3, 1000))), Optional.of(money(1000)), 4));
        return new BudgetCurve(List.of(
                new BudgetCurve.Point(money(0), figures(0, 0, 0)),
                new BudgetCurve.Point(money(1000), figures(2, 3, 1000)),
                new BudgetCurve.Point(money(2000), figures(4, 4, 2000))), Optional.of(money(1000)), 4);
    }
}
