package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.Figures;
import slotledger.model.plan.MachinePlan;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.PlanModel;
import slotledger.planner.internal.why.Freeing;

/**
 * What the whole plan would come to with another population of one machine. All are reckoned with everything else as
 * planned; for the cheapest of them everything else is planned anew.
 */
final class Populations {

    /** Most for which everything else is planned anew. */
    private static final int REPLANNED = 8;

    private static final Comparator<Alternative> BEST = Comparator
            .comparing((Alternative each) -> each.figures().isEmpty())
            .thenComparing(each -> each.figures().map(figures -> -figures.weight()).orElse(0L))
            .thenComparing(each -> each.figures().map(figures -> figures.cost().minor()).orElse(0L));

    private final WhatIf whatIf;
    private final Listed listed;
    private final Freeing freeing;
    private final Figures plan;
    private final Money ordered;

    /**
     * @param plan    what the plan comes to
     * @param ordered its goods and delivery
     */
    Populations(WhatIf whatIf, Listed listed, Freeing freeing, Figures plan, Money ordered) {
        this.whatIf = whatIf;
        this.listed = listed;
        this.freeing = freeing;
        this.plan = plan;
        this.ordered = ordered;
    }

    List<Alternative> of(MachinePlan machine, Progress progress) throws PlannerException {
        AssetTag tag = machine.machine().tag();
        Options options = listed.options().stream()
                .filter(each -> each.group().machines().stream().anyMatch(other -> other.tag().equals(tag)))
                .findFirst().orElseThrow();
        Candidate planned = options.candidates().stream()
                .filter(each -> each.after().equals(machine.after())).findFirst().orElseThrow();
        List<Alternative> reckoned = new ArrayList<>();
        for (Candidate candidate : options.candidates()) {
            progress.check();
            reckoned.add(candidate == planned
                    ? alternative(planned, true, Optional.of(plan), true)
                    : alternative(candidate, false, beside(options, planned, candidate), false));
        }
        reckoned.sort(BEST);
        List<Alternative> all = new ArrayList<>();
        int left = REPLANNED;
        for (Alternative each : reckoned) {
            if (each.isPlanned() || left == 0) {
                all.add(each);
                continue;
            }
            progress.step("planning with other populations", (REPLANNED - left) / (double) REPLANNED);
            left--;
            Candidate candidate = options.candidates().stream()
                    .filter(other -> other.after().equals(each.after())).findFirst().orElseThrow();
            Optional<Figures> figures =
                    whatIf.ask(listed.pinned(tag, candidate), progress).map(WhatIf.Answer::figures);
            all.add(alternative(candidate, false, figures, true));
        }
        all.sort(BEST);
        return all;
    }

    private static Alternative alternative(
            Candidate candidate, boolean isPlanned, Optional<Figures> figures, boolean replanned) {
        return new Alternative(
                candidate.after(), candidate.runs(), candidate.onTarget(), isPlanned, figures, replanned);
    }

    /** All others as planned: a true plan, so that nothing better than its figures is proven only. */
    private Optional<Figures> beside(Options options, Candidate planned, Candidate other) throws PlannerException {
        Optional<Freeing.Order> order = freeing.order(options, planned, other);
        if (order.isEmpty()) {
            return Optional.empty();
        }
        long work = PlanModel.labour(listed.request().policy(), other)
                - PlanModel.labour(listed.request().policy(), planned);
        int machines = (other.onTarget() ? 1 : 0) - (planned.onTarget() ? 1 : 0);
        long weight = plan.weight() + machines * options.group().weight();
        Money payable = new Money(order.get().againstBudget(), plan.payable().currency());
        Money cost = plan.cost().plus(new Money(
                order.get().payable() - ordered.minor() + work, payable.currency()));
        Money bound = plan.costBound().compareTo(cost) < 0 ? plan.costBound() : cost;
        return Optional.of(new Figures(plan.onTarget() + machines, weight, Math.max(weight, plan.weightBound()),
                payable, cost, machines == 0 ? bound : Money.zero(cost.currency())));
    }
}
