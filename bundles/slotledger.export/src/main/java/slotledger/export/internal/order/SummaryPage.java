package slotledger.export.internal.order;

import java.util.List;
import java.util.stream.Collectors;
import slotledger.export.PlanBook;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Lists;
import slotledger.export.internal.text.Words;
import slotledger.model.finding.Finding;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;

/** The page a reader opens first: what is bought, what it costs, what it brings, how good the plan is. */
final class SummaryPage {

    private final PlanBook book;
    private final Page page;
    private final List<SupplierPage> suppliers;

    SummaryPage(PlanBook book, Page page, List<SupplierPage> suppliers) {
        this.book = book;
        this.page = page;
        this.suppliers = suppliers;
    }

    void fill() {
        Plan plan = book.plan();
        page.title("Memory order: " + plan.title());
        page.onOnePage();
        page.note("Plan of " + plan.date() + ". All prices in " + plan.policy().currency().getCurrencyCode()
                + ", without tax" + (plan.spending().tax().isEmpty() ? "" : "; tax stands apart")
                + ". The sheets that follow hold one order a supplier, with part numbers and packs.");
        page.gap();
        spending(plan);
        page.gap();
        machines(plan);
        page.gap();
        page.section("How good the plan is");
        Words.optimality(plan.optimality()).forEach(page::across);
        remarks(plan.remarks());
    }

    private void machines(Plan plan) {
        page.section("Machines");
        line("Machines with a plan", plan.machines().size());
        for (Outcome outcome : Outcome.values()) {
            if (plan.count(outcome) > 0) {
                line("   of these: " + outcome.text(), plan.count(outcome));
            }
        }
        line("On target before the work", Words.onTargetBefore(plan));
        line("On target after the work", Words.onTargetAfter(plan));
        line("Machines to open", plan.work().size());
        line("Modules and fillers left over (see Leftovers)",
                plan.leftovers().stream().mapToLong(Leftover::count).sum());
        page.next().text(0, "   worth, at today's prices of new ones").money(3, Lists.worth(plan));
        long unknown = plan.leftovers().stream().filter(each -> each.worth().isEmpty())
                .mapToLong(Leftover::count).sum();
        if (unknown > 0) {
            line("   of unknown worth: no offer", unknown);
        }
        line("Without a plan: a fact is missing (see work.xlsx)", book.unresolved().size());
    }

    private void line(String name, long count) {
        page.next().text(0, name).count(1, count);
    }

    private void spending(Plan plan) {
        Spending spending = plan.spending();
        page.section("What to order, and what it costs");
        page.subheader("Supplier", "Goods", "Delivery", "Total", "Order lines", "Modules", "Prices hold until",
                "Delivery, days");
        int first = page.rowNumber() + 1;
        for (SupplierPage supplier : suppliers) {
            page.next().text(0, supplier.supplier().name());
            page.formula(1, supplier.goodsCell(), supplier.goods(), Look.MONEY);
            page.formula(2, supplier.deliveryCell(), supplier.delivery(), Look.MONEY);
            page.formula(3, supplier.totalCell(), supplier.goods().plus(supplier.delivery()), Look.MONEY);
            page.count(4, supplier.purchases().size());
            page.count(5, supplier.purchases().stream().mapToInt(Purchase::modules).sum());
            page.date(6, supplier.validUntil());
            if (supplier.validUntil().isEmpty()) {
                page.text(6, "ask");
            }
            supplier.longestDelivery()
                    .ifPresentOrElse(days -> page.count(7, days), () -> page.text(7, "not known"));
        }
        if (suppliers.isEmpty()) {
            page.next().text(0, "Nothing is bought.").money(1, spending.goods()).money(2, spending.deliveryTotal())
                    .money(3, spending.payable());
        }
        int last = page.rowNumber();
        page.next().text(0, "To pay to suppliers", Look.STRONG);
        total(1, first, last, spending.goods());
        total(2, first, last, spending.deliveryTotal());
        total(3, first, last, spending.payable());
        String payable = page.here(3);
        Tax rules = plan.policy().buying().tax();
        String limited = spending.tax().isEmpty() ? payable : tax(spending, payable, rules);
        plan.policy().budget().ifPresent(budget -> budget(budget, spending.againstBudget(rules), limited));
        page.next().text(0, "Own labour, at the rates of the policy").money(3, spending.labour());
        String labour = page.here(3);
        page.next().text(0, "Cost in all", Look.STRONG);
        page.formula(3, payable + "+" + labour, spending.total(), Look.MONEY_STRONG);
    }

    private void total(int column, int first, int last, Money value) {
        page.formula(column, "SUM(" + Page.range(first, last, column) + ")", value, Look.MONEY_STRONG);
    }

    /** Tax apart, and what is paid with it; returns the cell that a budget limits. */
    private String tax(Spending spending, String payable, Tax rules) {
        page.next().text(0, "Tax, rounded for each supplier");
        page.formula(3, suppliers.isEmpty() ? "0" : suppliers.stream().map(SupplierPage::taxCell)
                .collect(Collectors.joining("+")), spending.taxTotal(), Look.MONEY);
        String tax = page.here(3);
        page.next().text(0, "To pay with tax");
        page.formula(3, payable + "+" + tax, spending.payable().plus(spending.taxTotal()), Look.MONEY);
        return rules.inBudgets() ? page.here(3) : payable;
    }

    private void budget(Money budget, Money limited, String payable) {
        boolean withTax = book.plan().policy().buying().tax().inBudgets();
        page.next().text(0, "Budget for goods and delivery, " + (withTax ? "with tax" : "without tax"))
                .number(3, budget.amount().doubleValue(), Look.MONEY_INPUT);
        String cell = page.here(3);
        Money left = budget.minus(limited);
        page.next().text(0, "Left of the budget");
        page.formula(3, cell + "-" + payable, left, Look.MONEY);
        page.formula(4, "IF(ROUND(" + page.here(3) + ",2)<0,\"over budget\",\"within budget\")",
                left.minor() < 0 ? "over budget" : "within budget", Look.STRONG);
    }

    private void remarks(List<Finding> remarks) {
        if (!remarks.isEmpty()) {
            page.gap();
            page.section("To be checked");
            remarks.forEach(remark -> page.across(remark.toString()));
        }
    }
}
