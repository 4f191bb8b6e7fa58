package slotledger.workbench.internal.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.plan.WithoutOffer;
import slotledger.model.trade.Target;
import slotledger.model.unit.Money;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.Line;

/** What was wanted beside what the plan brings, and what binds it. */
final class PlanLines {

    private static final int SHOWN = 12;

    private final Plan plan;

    private PlanLines(Plan plan) {
        this.plan = plan;
    }

    static List<Line> of(Plan plan) {
        PlanLines lines = new PlanLines(plan);
        List<Line> all = new ArrayList<>();
        all.add(Line.heading(Texts.plan_money, lines.money()));
        all.add(Line.heading(Texts.plan_targets, lines.targets()));
        all.add(Line.heading(Texts.plan_binds, lines.binds()));
        all.add(Line.heading(Texts.plan_next_money, lines.otherBudgets()));
        all.add(Line.heading(Texts.plan_without, lines.without()));
        all.add(Line.heading(Texts.plan_proof, lines.proof()));
        return all.stream().filter(section -> !section.children().isEmpty()).toList();
    }

    private List<Line> money() {
        Spending spending = plan.spending();
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Texts.plan_goods, "", spending.goods().toString()));
        lines.add(Line.of(Texts.plan_delivery, "", spending.deliveryTotal().toString()));
        if (!spending.tax().isEmpty()) {
            lines.add(Line.of(Texts.plan_tax, "", spending.taxTotal().toString()));
        }
        Money limited = spending.againstBudget(plan.policy().buying().tax());
        lines.add(Line.of(Texts.plan_against_budget, plan.policy().budget()
                .map(budget -> Texts.with(Texts.plan_at_most, budget)).orElse(Texts.plan_no_limit),
                limited.toString()));
        plan.policy().costCentreBudgets().forEach((centre, budget) -> lines.add(Line.of(
                Texts.with(Texts.plan_cost_centre, centre), Texts.with(Texts.plan_at_most, budget),
                spending.byCostCentre().getOrDefault(centre, Money.zero(budget.currency())).toString())));
        lines.add(Line.of(Texts.plan_labour, "", spending.labour().toString()));
        lines.add(Line.of(Texts.plan_total, "", spending.total().toString()));
        plan.insights().alone().ifPresent(alone -> lines.add(Line.of(Texts.plan_alone, "",
                Texts.with(Texts.plan_alone_is, alone.total(), alone.onTarget()))));
        Money worth = plan.leftovers().stream().flatMap(each -> each.worth().stream())
                .reduce(Money.zero(plan.policy().currency()), Money::plus);
        lines.add(Line.of(Texts.plan_leftovers, "", Texts.with(Texts.plan_leftovers_are,
                plan.leftovers().stream().mapToInt(Leftover::count).sum(), worth)));
        return lines;
    }

    private List<Line> targets() {
        Map<Target, List<MachinePlan>> byTarget = new LinkedHashMap<>();
        plan.policy().targets().forEach(target -> byTarget.put(target, new ArrayList<>()));
        plan.machines().forEach(machine -> machine.target().ifPresent(target ->
                byTarget.computeIfAbsent(target, none -> new ArrayList<>()).add(machine)));
        List<Line> lines = new ArrayList<>();
        byTarget.forEach((target, machines) -> lines.add(target(target, machines)));
        return lines;
    }

    private static Line target(Target target, List<MachinePlan> machines) {
        long before = machines.stream().filter(PlanLines::isOnTargetNow).count();
        long after = machines.stream().filter(machine -> machine.obstacle().isEmpty()).count();
        String role = target.role().equals("*") ? Texts.plan_any_role : target.role();
        String wanted = target.capacity()
                + (target.sameChannels() ? ", " + Texts.plan_same_channels : "")
                + (target.ecc() ? ", ECC" : "")
                + target.rate().map(rate -> ", " + rate).orElse("");
        String result = machines.isEmpty() ? Texts.plan_no_machine
                : Texts.with(Texts.plan_on_target, machines.size(), before, after);
        return new Line(List.of(role, wanted, result), role + " · " + wanted + " · " + result
                + (target.weight() == 1 ? "" : " · " + Texts.with(Texts.plan_weight, target.weight())),
                machines.stream().filter(machine -> machine.obstacle().isPresent()).findFirst()
                        .map(machine -> machine.machine().tag()),
                List.of());
    }

    private static boolean isOnTargetNow(MachinePlan machine) {
        return machine.outcome() == Outcome.ON_TARGET || machine.outcome() == Outcome.DONOR;
    }

    private record Bond(Obstacle.Kind kind, String freedBy) {}

    private List<Line> binds() {
        Map<Bond, List<MachinePlan>> bound = new LinkedHashMap<>();
        plan.machines().forEach(machine -> machine.obstacle().ifPresent(obstacle -> bound
                .computeIfAbsent(new Bond(obstacle.kind(), obstacle.freedBy()), none -> new ArrayList<>())
                .add(machine)));
        List<Line> lines = new ArrayList<>();
        bound.forEach((bond, machines) -> lines.add(bond(bond, machines)));
        lines.sort((one, other) -> one.cell(0).compareTo(other.cell(0)));
        return lines;
    }

    private static Line bond(Bond bond, List<MachinePlan> machines) {
        List<AssetTag> tags = machines.stream().map(machine -> machine.machine().tag()).toList();
        String message = machines.get(0).obstacle().orElseThrow().message();
        return new Line(List.of(bond.kind().text(), bond.freedBy(), Texts.with(Texts.plan_machines, tags.size())),
                message + "\n" + bond.freedBy() + "\n" + tags(tags), Optional.of(tags.get(0)), List.of());
    }

    private List<Line> otherBudgets() {
        List<Line> lines = new ArrayList<>();
        plan.insights().less().forEach(step -> lines.add(budget(step)));
        plan.insights().more().forEach(step -> lines.add(budget(step)));
        return lines;
    }

    private static Line budget(BudgetStep step) {
        String result = Texts.with(Texts.plan_step_is, step.figures().onTarget(), step.figures().cost());
        List<AssetTag> changed = step.gained().isEmpty() ? step.lost() : step.gained();
        return new Line(List.of("", step.budget().toString(), result),
                step.budget() + " · " + result + "\n" + tags(changed), changed.stream().findFirst(), List.of());
    }

    private List<Line> without() {
        return plan.insights().without().stream().map(PlanLines::without).toList();
    }

    private static Line without(WithoutOffer line) {
        return Line.of(line.offer(), "", Texts.with(Texts.plan_step_is, line.figures().onTarget(),
                line.figures().cost()));
    }

    private List<Line> proof() {
        Optimality proof = plan.optimality();
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(Texts.plan_weight_bound, Texts.with(Texts.plan_no_more_than, proof.weightBound()),
                Long.toString(proof.weightOnTarget())));
        lines.add(Line.of(Texts.plan_cost_bound, Texts.with(Texts.plan_no_less_than, proof.costBound()),
                proof.cost().toString()));
        lines.add(Line.of(proof.isProven() ? Texts.plan_proven : Texts.with(Texts.plan_gap,
                proof.costGap().movePointRight(2).stripTrailingZeros().toPlainString())));
        if (proof.cut()) {
            lines.add(Line.of(Texts.plan_cut));
        }
        lines.add(Line.of(Texts.with(Texts.plan_found_by, proof.solver())));
        proof.limits().forEach(limit -> lines.add(Line.of(limit)));
        return lines;
    }

    private static String tags(List<AssetTag> tags) {
        return tags.stream().limit(SHOWN).map(AssetTag::value).collect(Collectors.joining(", "))
                + (tags.size() > SHOWN ? " " + Texts.with(Texts.order_more, tags.size() - SHOWN) : "");
    }
}
