package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;

/**
 * The best plan for round budgets from nothing to all that money is good for. The first are the asked one, no limit and
 * nothing, then always the one in the middle of the widest gap, so that the first points already show the curve.
 */
final class CurveSweep {

    private static final int[] ROUND = {1, 2, 5, 10};

    private final WhatIf whatIf;
    private final Listed listed;
    private final Optional<Money> asked;
    private final long withTarget;
    private final TreeMap<Money, Figures> found = new TreeMap<>();

    CurveSweep(WhatIf whatIf, Listed listed) {
        this.whatIf = whatIf;
        this.listed = listed;
        asked = listed.request().policy().budget();
        withTarget = listed.options().stream()
                .mapToLong(each -> each.group().weight() * each.group().size()).sum();
    }

    /**
     * The curve.
     *
     * @param plan what the plan itself comes to
     */
    BudgetCurve sweep(Figures plan, int points, Consumer<BudgetCurve> soFar, Progress progress)
            throws PlannerException {
        Figures all = plan;
        if (asked.isPresent()) {
            found.put(asked.get(), plan);
            soFar.accept(curve());
            all = ask(listed.withBudget(Optional.empty()), progress);
        }
        found.putIfAbsent(all.payable(), all);
        soFar.accept(curve());
        SortedSet<Long> open = budgets(all.payable().minor(), points);
        found.keySet().forEach(done -> open.remove(done.minor()));
        int count = open.size();
        while (!open.isEmpty()) {
            progress.step("curve of budgets", (count - open.size()) / (double) count);
            long next = inWidestGap(open, new TreeSet<>(found.keySet().stream().map(Money::minor).toList()));
            open.remove(next);
            found.put(money(next), ask(listed.withBudget(Optional.of(money(next))), progress));
            soFar.accept(curve());
        }
        return curve();
    }

    private Figures ask(Listed changed, Progress progress) throws PlannerException {
        return whatIf.ask(changed, progress)
                .orElseThrow(() -> new IllegalStateException("The programme must allow to do nothing."))
                .figures();
    }

    /** Multiples of a round amount below the largest one. */
    static SortedSet<Long> budgets(long largest, int points) {
        SortedSet<Long> budgets = new TreeSet<>();
        long step = step(largest, points);
        for (long budget = 0; budget < largest; budget += step) {
            budgets.add(budget);
        }
        return budgets;
    }

    /** The smallest of 1, 2, 5, 10, 20, 50 ... minor units that gives no more points than wanted. */
    static long step(long largest, int points) {
        for (long ten = 1; ; ten *= 10) {
            for (int factor : ROUND) {
                if (largest <= ten * factor * (points - 1L)) {
                    return ten * factor;
                }
            }
        }
    }

    /** The open budget that lies farthest from all that are done; nothing at all comes first. */
    static long inWidestGap(SortedSet<Long> open, NavigableSet<Long> done) {
        long best = open.first();
        long widest = -1;
        for (long budget : open) {
            long below = done.floor(budget) == null ? Long.MAX_VALUE : budget - done.floor(budget);
            long above = done.ceiling(budget) == null ? Long.MAX_VALUE : done.ceiling(budget) - budget;
            long distance = budget == 0 ? Long.MAX_VALUE : Math.min(below, above);
            if (distance > widest) {
                widest = distance;
                best = budget;
            }
        }
        return best;
    }

    /** A plan for a smaller budget is one for a larger, too. */
    private BudgetCurve curve() {
        List<BudgetCurve.Point> points = new ArrayList<>();
        Figures best = null;
        for (Map.Entry<Money, Figures> each : found.entrySet()) {
            Figures figures = each.getValue();
            if (best != null && best.weight() > figures.weight()) {
                figures = new Figures(best.onTarget(), best.weight(), Math.max(best.weight(), figures.weightBound()),
                        best.payable(), best.cost(), best.costBound());
            }
            best = figures;
            points.add(new BudgetCurve.Point(each.getKey(), figures));
        }
        return new BudgetCurve(points, asked, withTarget);
    }

    private Money money(long minor) {
        return new Money(minor, listed.request().policy().currency());
    }
}
