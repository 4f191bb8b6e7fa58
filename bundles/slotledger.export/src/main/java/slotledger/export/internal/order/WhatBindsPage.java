package slotledger.export.internal.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.export.PlanBook;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Lists;
import slotledger.export.internal.text.TagList;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Figures;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.plan.WithoutOffer;
import slotledger.model.unit.Money;

/** What keeps machines from their targets, what more or less money would do, and what each order line is worth. */
final class WhatBindsPage {

    static final int[] WIDTHS = {40, 14, 14, 14, 14, 14, 60};

    private static final String ASK = "Not computed. Plan with --insights to see it here.";

    private record Matter(Obstacle.Kind kind, String freedBy) {
    }

    private final Plan plan;
    private final Figures now;
    private final Page page;

    WhatBindsPage(PlanBook book, Page page) {
        this.plan = book.plan();
        this.now = Figures.of(plan);
        this.page = page;
    }

    void fill() {
        page.title("What binds, and what other terms would do");
        page.note("By this plan " + now.onTarget() + " machines are on target, " + now.weight()
                + " counted by the weights of the policy, for " + now.payable() + " to suppliers, " + taxed() + ", and "
                + now.cost() + " with labour, without tax.");
        page.gap();
        obstacles();
        page.gap();
        money();
        page.gap();
        lines();
        page.gap();
        choices();
    }

    private String taxed() {
        return plan.policy().buying().tax().inBudgets() ? "with tax" : "without tax";
    }

    private void obstacles() {
        Map<Matter, List<AssetTag>> matters = new LinkedHashMap<>();
        for (MachinePlan machine : Lists.notOnTarget(plan)) {
            machine.obstacle().ifPresent(obstacle -> matters
                    .computeIfAbsent(new Matter(obstacle.kind(), obstacle.freedBy()), unused -> new ArrayList<>())
                    .add(machine.machine().tag()));
        }
        page.section("What keeps machines from their targets");
        page.across("Each line says what would free one machine at a time, with all others as planned. Why it is so"
                + " stands on sheet Not helped, machine by machine.");
        page.subheader("What would change it", "What binds", "Machines", "", "", "", "Which");
        matters.forEach((matter, tags) -> page.next().text(0, matter.freedBy()).text(1, matter.kind().text())
                .count(2, tags.size()).text(6, TagList.text(tags)));
        if (matters.isEmpty()) {
            page.next().text(0, "Every machine with a target reaches it.");
        }
    }

    private void money() {
        page.section("What another budget would do");
        page.across("The budget limits goods and delivery, " + taxed() + ". Each line is the smallest budget that does"
                + " so much; with a cent less it is the line before. A plan"
                + " made with that budget is the one described.");
        if (plan.insights().less().isEmpty()) {
            page.next().text(0, ASK);
            return;
        }
        page.subheader("Budget", "Amount", "More or less than to pay now", "Machines on target", "By weight",
                "Cost with labour", "What changes");
        List<BudgetStep> less = plan.insights().less();
        for (int i = less.size() - 1; i >= 0; i--) {
            step(i == 0 ? "Smallest that does as much as this plan" : "Smaller", less.get(i));
        }
        plan.insights().more().forEach(step -> step("Larger", step));
        if (plan.insights().more().isEmpty()) {
            page.next().text(0, "A larger budget would bring no more machines on target.");
        }
    }

    private void step(String name, BudgetStep step) {
        page.next().text(0, step.isSmallest() ? name : name + " (perhaps less is enough)")
                .money(1, step.budget()).money(2, step.budget().minus(now.payable()))
                .count(3, step.figures().onTarget()).count(4, step.figures().weight())
                .money(5, step.figures().cost()).text(6, changes(step));
    }

    private static String changes(BudgetStep step) {
        String gained = step.gained().isEmpty() ? ""
                : "On target as well: " + TagList.text(step.gained()) + ".";
        String lost = step.lost().isEmpty() ? "" : "No longer on target: " + TagList.text(step.lost()) + ".";
        String both = (gained + " " + lost).strip();
        return both.isEmpty() ? "The same machines are on target." : both;
    }

    private void lines() {
        page.section("What each order line is worth");
        page.across("The best plan that can be made if the line can't be bought, from any number of other lines. Fewer"
                + " machines on target are a loss even where that plan costs less.");
        if (plan.insights().without().isEmpty()) {
            page.next().text(0, plan.purchases().isEmpty() ? "Nothing is bought." : ASK);
            return;
        }
        page.subheader("Without the line", "It costs", "On target then", "Fewer, by weight", "Cost in all then",
                "More or less", "Machines it is for");
        for (WithoutOffer each : plan.insights().without()) {
            plan.purchases().stream().filter(line -> line.offer().id().equals(each.offer()))
                    .forEach(line -> line(line, each.figures()));
        }
    }

    private void choices() {
        if (plan.insights().choices().isEmpty()) {
            return;
        }
        page.section("What each decision costs");
        page.across("The best plan that can be made without the decision, all others kept. Nobody says that it was"
                + " wrong: this is its price.");
        page.subheader("Without the decision", "", "On target then", "More, by weight", "Cost in all then",
                "More or less", "");
        for (WithoutChoice each : plan.insights().choices()) {
            Figures then = each.figures();
            page.next().text(0, each.choice() + (then.isProven() ? "" : " (a better one may exist)"))
                    .count(2, then.onTarget()).count(3, then.weight() - now.weight())
                    .money(4, then.cost()).money(5, then.cost().minus(now.cost()));
        }
    }

    private void line(Purchase line, Figures then) {
        Money more = then.cost().minus(now.cost());
        page.next().text(0, line.offer().supplier() + ", " + line.offer().part() + ": "
                        + Words.brief(line.offer().piece()) + (then.isProven() ? "" : " (a better one may exist)"))
                .money(1, line.total()).count(2, then.onTarget()).count(3, now.weight() - then.weight())
                .money(4, then.cost()).money(5, more)
                .text(6, line.uses().isEmpty() ? "None; it fills the order up."
                        : TagList.text(line.uses().stream().map(Purchase.Use::machine).distinct().toList()));
    }
}
