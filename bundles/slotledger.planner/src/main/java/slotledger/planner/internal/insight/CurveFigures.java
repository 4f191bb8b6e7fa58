package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.milp.PriceSweep.Sample;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.model.PlanModel;

/** What values of the programme come to, and what no plan with the same money can exceed. */
final class CurveFigures {

    private static final long DEAREST = 1_000_000_000;

    private final Map<Integer, Long> cheapest = new HashMap<>();
    private final PlanModel model;
    private final Listed listed;
    private final Collection<Sample> samples;

    /** Weighs with all that is proven so far. */
    CurveFigures(PlanModel model, Listed listed, Collection<Sample> samples) {
        this.model = model;
        this.listed = listed;
        this.samples = samples;
    }

    /** About twice what a weighted machine can cost at most; a guess is enough, and far above it numbers get coarse. */
    long dearest() {
        long dearest = 1;
        for (Options each : listed.options()) {
            if (each.canBeHelped() && each.group().weight() > 0) {
                long cheapest = each.candidates().stream().filter(Candidate::onTarget).mapToLong(this::price)
                        .min().orElse(0);
                dearest = Math.max(dearest, cheapest / each.group().weight());
            }
        }
        for (Supplier supplier : listed.request().market().suppliers().values()) {
            dearest = Math.addExact(dearest, supplier.minimum().map(Money::minor).orElse(0L)
                    + supplier.shipping().map(Money::minor).orElse(0L));
        }
        return Math.min(DEAREST, 2 * dearest);
    }

    /** With single packs of the cheapest offers. */
    private long price(Candidate candidate) {
        long[] sum = {0};
        candidate.used().forEach((kind, count) -> sum[0] += count * cheapest.computeIfAbsent(kind, number ->
                listed.stock().offers(listed.stock().pieces().get(number)).stream()
                        .mapToLong(offer -> offer.perPack(1).minor()).min().orElse(0)));
        return sum[0];
    }

    /** The plans that were found, by budget; one for a smaller budget is one for a larger, too. */
    BudgetCurve curve(SortedMap<Long, long[]> found, Optional<Money> asked) {
        List<BudgetCurve.Point> points = new ArrayList<>();
        long[] best = null;
        for (Map.Entry<Long, long[]> each : found.entrySet()) {
            boolean isBetter = best == null || weight(each.getValue()) > weight(best)
                    || weight(each.getValue()) == weight(best) && cost(each.getValue()) < cost(best);
            best = isBetter ? each.getValue() : best;
            points.add(new BudgetCurve.Point(money(each.getKey()), figures(each.getKey(), best)));
        }
        long withTarget = listed.options().stream()
                .mapToLong(each -> each.group().weight() * each.group().size()).sum();
        return new BudgetCurve(points, asked, withTarget);
    }

    private Figures figures(long budget, long[] values) {
        Choice choice = model.choice(values);
        long onTarget = 0;
        long weight = 0;
        long below = 0;
        long most = 0;
        for (int group = 0; group < choice.options().size(); group++) {
            Options options = choice.options().get(group);
            long machines = WhatIf.onTarget(choice, group);
            onTarget += machines;
            weight += machines * options.group().weight();
            most += options.candidates().stream().anyMatch(Candidate::onTarget)
                    ? options.group().weight() * options.group().size() : 0;
            below += options.canBeHelped() ? (options.group().size() - machines) * options.group().weight() : 0;
        }
        // A room that stays mixed, or a pin that isn't kept, is missed as well; of such a plan no bound is known.
        boolean isAllDecided = model.missed().of(values) == below;
        long missed = isAllDecided ? samples.stream().mapToLong(each -> each.missedWith(budget)).max().orElse(0) : 0;
        Money cost = money(cost(values));
        return new Figures(onTarget, weight, Math.max(weight, most - Math.max(0, missed)),
                money(model.againstBudget().of(values)), cost, money(Math.min(0, cost.minor())));
    }

    private long weight(long[] values) {
        Choice choice = model.choice(values);
        long weight = 0;
        for (int group = 0; group < choice.options().size(); group++) {
            weight += WhatIf.onTarget(choice, group) * choice.options().get(group).group().weight();
        }
        return weight;
    }

    /** Goods, delivery and labour. */
    private long cost(long[] values) {
        Choice choice = model.choice(values);
        long labour = 0;
        for (int group = 0; group < choice.options().size(); group++) {
            int number = 0;
            for (Candidate candidate : choice.options().get(group).candidates()) {
                labour += choice.count(group, number) * PlanModel.labour(listed.request().policy(), candidate);
                number++;
            }
        }
        return Math.addExact(model.payable().of(values), labour);
    }

    private Money money(long minor) {
        return new Money(minor, listed.request().policy().currency());
    }
}
