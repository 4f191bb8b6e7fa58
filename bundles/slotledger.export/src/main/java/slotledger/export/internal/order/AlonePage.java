package slotledger.export.internal.order;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Words;
import slotledger.model.plan.BoughtAlone;
import slotledger.model.plan.Plan;
import slotledger.model.unit.Money;

/** The plan beside what buying for each machine by itself would have cost. */
final class AlonePage {

    private static final int PLAN = 1;
    private static final int ALONE = 2;
    private static final int DIFFERENCE = 3;

    private static final List<String> RULES = List.of(
            "Offers, rules, targets and rates of labour are those of the plan, and so are the upgrades that may be"
                    + " chosen from.",
            "Each machine below its target, in the order of the inventory, gets the upgrade that costs least by itself:"
                    + " modules at the price of a single purchase, and labour.",
            "Modules on the shelf go to the first machines that can use them. Modules pulled out of one machine are not"
                    + " used in another.",
            "The sum is ordered at once, with the spares of the policy, at the price steps it reaches, with delivery;"
                    + " a supplier is left out where that makes the whole order cheaper.",
            "Where stock or the money of a cost centre is used up, a machine is left out; where the budget does not"
                    + " reach, the last ones of the inventory are.");

    private final Plan plan;
    private final BoughtAlone alone;
    private final Page page;
    private final List<SupplierPage> suppliers;

    AlonePage(Plan plan, BoughtAlone alone, Page page, List<SupplierPage> suppliers) {
        this.plan = plan;
        this.alone = alone;
        this.page = page;
        this.suppliers = suppliers;
    }

    void fill() {
        page.title("The plan, and buying machine by machine");
        page.onOnePage();
        page.across("Somebody careful with a spreadsheet would look for the cheapest upgrade of each machine by itself,"
                + " and then order the sum. What that would bring and cost stands beside the plan. All prices are"
                + " without tax.");
        page.gap();
        page.header("", "This plan", "Machine by machine", "Difference");
        machines();
        money();
        page.gap();
        page.across(verdict());
        page.gap();
        page.section("How the second column was reckoned");
        RULES.forEach(page::across);
        if (!plan.choices().uniform().isEmpty()) {
            page.across("Rooms whose machines are to be alike are not kept alike.");
        }
    }

    private void machines() {
        counts("Machines on their target after the work", Words.onTargetAfter(plan), alone.onTarget());
        if (alone.weight() != alone.onTarget() || plan.optimality().weightOnTarget() != Words.onTargetAfter(plan)) {
            counts("The same, counted by weight (urgent roles count more)", plan.optimality().weightOnTarget(),
                    alone.weight());
        }
        counts("Machines to open", plan.work().size(), alone.opened());
    }

    private void counts(String name, long planned, long other) {
        page.next().text(0, name).count(PLAN, planned).count(ALONE, other);
        page.formula(DIFFERENCE, page.here(PLAN) + "-" + page.here(ALONE), BigDecimal.valueOf(planned - other),
                Look.COUNT);
    }

    private void money() {
        amounts("Modules and fillers", SupplierPage::goodsCell, plan.spending().goods(), alone.goods());
        int first = page.rowNumber();
        amounts("Delivery", SupplierPage::deliveryCell, plan.spending().deliveryTotal(), alone.delivery());
        page.next().text(0, "Own labour, at the rates of the policy").money(PLAN, plan.spending().labour())
                .money(ALONE, alone.labour());
        difference(plan.spending().labour().minus(alone.labour()), Look.MONEY);
        int last = page.rowNumber();
        page.next().text(0, "Cost in all", Look.STRONG);
        total(PLAN, first, last, plan.spending().total());
        total(ALONE, first, last, alone.total());
        difference(plan.spending().total().minus(alone.total()), Look.MONEY_STRONG);
        perMachine();
    }

    private void amounts(String name, Function<SupplierPage, String> cell, Money planned, Money other) {
        page.next().text(0, name).money(ALONE, other);
        if (suppliers.isEmpty()) {
            page.money(PLAN, planned);
        } else {
            page.formula(PLAN, suppliers.stream().map(cell).collect(Collectors.joining("+")), planned, Look.MONEY);
        }
        difference(planned.minus(other), Look.MONEY);
    }

    private void difference(Money value, Look look) {
        page.formula(DIFFERENCE, page.here(PLAN) + "-" + page.here(ALONE), value, look);
    }

    private void total(int column, int first, int last, Money value) {
        page.formula(column, "SUM(" + Page.range(first, last, column) + ")", value, Look.MONEY_STRONG);
    }

    /** What it takes to bring one machine to its target, where both bring any there. */
    private void perMachine() {
        long before = Words.onTargetBefore(plan);
        long planned = Words.onTargetAfter(plan) - before;
        long other = alone.onTarget() - before;
        if (planned > 0 && other > 0) {
            int sum = page.rowNumber();
            BigDecimal mine = each(plan.spending().total(), planned);
            BigDecimal theirs = each(alone.total(), other);
            page.next().text(0, "Cost of each machine that reaches its target");
            page.formula(PLAN, Page.at(sum, PLAN) + "/" + planned, mine, Look.MONEY);
            page.formula(ALONE, Page.at(sum, ALONE) + "/" + other, theirs, Look.MONEY);
            page.formula(DIFFERENCE, page.here(PLAN) + "-" + page.here(ALONE), mine.subtract(theirs), Look.MONEY);
        }
    }

    private static BigDecimal each(Money total, long machines) {
        return total.amount().divide(BigDecimal.valueOf(machines), MathContext.DECIMAL64);
    }

    private String verdict() {
        long more = Words.onTargetAfter(plan) - alone.onTarget();
        Money less = alone.total().minus(plan.spending().total());
        String money = less.isZero() ? "costs the same"
                : less.minor() > 0 ? "costs %s less".formatted(less)
                : "costs %s more".formatted(Money.zero(less.currency()).minus(less));
        if (more == 0) {
            return "The plan brings as many machines to their target and %s.".formatted(money);
        }
        return "The plan brings %d %s machine%s to their target and %s.%s".formatted(Math.abs(more),
                more > 0 ? "more" : "fewer", Math.abs(more) == 1 ? "" : "s", money,
                more > 0 ? "" : " Those it brings there are the more urgent ones.");
    }
}
