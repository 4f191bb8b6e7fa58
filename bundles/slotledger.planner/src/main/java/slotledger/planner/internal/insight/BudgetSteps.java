package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.BudgetStep;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.insight.WhatIf.Answer;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;

/** Walks from the plan to larger and to smaller budgets, from one number of weighted machines on target to the next. */
final class BudgetSteps {

    private final WhatIf whatIf;
    private final Listed listed;
    private final LeastMoney least;
    private final OnTarget planned;
    private final long missed;

    /** Starts from a plan that leaves so many weighted machines below target though they could be helped. */
    BudgetSteps(WhatIf whatIf, MilpSolver solver, Listed listed, long missed, OnTarget planned) {
        this.whatIf = whatIf;
        this.listed = listed;
        this.planned = planned;
        least = new LeastMoney(solver, listed);
        this.missed = missed;
    }

    List<BudgetStep> more(int most, Progress progress) throws PlannerException {
        List<BudgetStep> steps = new ArrayList<>();
        long now = missed;
        while (steps.size() < most && now > 0 && listed.request().policy().budget().isPresent()) {
            Optional<MilpSolution> budget = least.forMissing(now - 1, progress);
            if (budget.isEmpty()) {
                break;
            }
            now = Math.min(now - 1, add(steps, budget.get(), progress));
        }
        return steps;
    }

    List<BudgetStep> less(int most, Progress progress) throws PlannerException {
        List<BudgetStep> steps = new ArrayList<>();
        Optional<MilpSolution> budget = least.forMissing(missed, progress);
        while (steps.size() < most && budget.isPresent()) {
            add(steps, budget.get(), progress);
            if (budget.get().value() == 0) {
                break;
            }
            long now = answer(budget.get().value() - 1, progress).solved().missed().value();
            budget = least.forMissing(now, progress);
        }
        return steps;
    }

    /** Adds the best plan for a budget, and returns the weighted machines it leaves below target. */
    private long add(List<BudgetStep> steps, MilpSolution budget, Progress progress) throws PlannerException {
        Answer answer = answer(budget.value(), progress);
        List<AssetTag> gained = planned.gained(answer.solved().choice());
        List<AssetTag> lost = planned.lost(answer.solved().choice());
        steps.add(new BudgetStep(money(budget.value()), answer.figures(), gained, lost, budget.isProven()));
        return answer.solved().missed().value();
    }

    private Answer answer(long budget, Progress progress) throws PlannerException {
        return whatIf.ask(listed.withBudget(Optional.of(money(budget))), progress)
                .orElseThrow(() -> new IllegalStateException("The programme must allow to do nothing."));
    }

    private Money money(long minor) {
        return new Money(minor, listed.request().policy().currency());
    }
}
