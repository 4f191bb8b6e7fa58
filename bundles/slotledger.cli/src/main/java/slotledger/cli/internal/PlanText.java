package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;

/** A plan in words and as facts. */
final class PlanText {

    private static final int REMARKS_SHOWN = 3;

    private final Plan plan;

    PlanText(Plan plan) {
        this.plan = plan;
    }

    /** What the plan does, and where its files are. */
    void report(Answer.Builder answer, List<Path> files) {
        summary(answer);
        facts(answer);
        new InsightsText(plan).report(answer);
        answer.items("Files", files.stream().map(Path::toString).toList());
        answer.fact("files", files.stream().map(Path::toString).toList());
    }

    private void summary(Answer.Builder answer) {
        answer.item("Plan", withTarget() + " machines have a target: " + onTargetBefore() + " reach it now, "
                + onTargetAfter() + " after the work; " + plan.work().size() + " are opened");
        Map<Obstacle.Kind, Integer> why = notHelped();
        if (!why.isEmpty()) {
            List<String> parts = new ArrayList<>();
            why.forEach((kind, count) -> parts.add(count + " by " + kind.text()));
            answer.item("", "kept from it: " + String.join(", ", parts));
        }
        Spending spending = plan.spending();
        Tax tax = plan.policy().buying().tax();
        answer.item("Order", pieces() + " in " + count(plan.purchases().size(), "line")
                + ": " + spending.againstBudget(tax)
                + (spending.deliveryTotal().isZero() ? "" : " with delivery") + (tax.inBudgets() ? " and tax" : "")
                + plan.policy().budget().map(budget -> ", budget " + budget).orElse(""));
        answer.item("Work", spending.labour() + " labour, " + spending.total() + " in all; "
                + leftover(Leftover.Origin.PULLED) + " pulled modules left over");
        answer.item("Left over", count(leftovers(true) + leftovers(false), "module")
                + ", worth about " + worth() + " at today's prices of new ones"
                + (leftovers(false) == 0 ? "" : "; " + leftovers(false) + " of unknown worth: nobody offers them"));
        plan.insights().alone().ifPresent(alone -> answer.item("Instead", "machine by machine " + alone.onTarget()
                + " would be on target, for " + alone.total() + " in all"));
        answer.item("Proof", proof(plan.optimality()));
        List<Finding> remarks =
                plan.remarks().stream().filter(remark -> remark.severity() != Severity.NOTE).toList();
        remarks.stream().limit(REMARKS_SHOWN).forEach(remark -> answer.item("Remark", remark.toString()));
        if (remarks.size() > REMARKS_SHOWN) {
            answer.item("", (remarks.size() - REMARKS_SHOWN) + " more remarks stand in the order workbook");
        }
    }

    private static String proof(Optimality optimality) {
        if (optimality.isProven()) {
            return "no plan brings more machines to their target, and none that brings as many costs less";
        }
        String text = "at most " + (optimality.weightBound() - optimality.weightOnTarget())
                + " more on target, counted by weight, or a cost lower by " + optimality.costGap().movePointRight(2)
                .stripTrailingZeros().toPlainString() + " %, could be possible";
        return optimality.cut() ? text + " (the search was stopped early)" : text;
    }

    private void facts(Answer.Builder answer) {
        Spending spending = plan.spending();
        answer.fact("date", plan.date().toString())
                .fact("machinesWithTarget", withTarget())
                .fact("onTargetBefore", onTargetBefore())
                .fact("onTargetAfter", onTargetAfter())
                .fact("opened", plan.work().size())
                .fact("modulesBought", bought(ModuleKind.class))
                .fact("fillersBought", bought(Filler.class))
                .fact("goods", amount(spending.goods()))
                .fact("delivery", amount(spending.deliveryTotal()))
                .fact("leftoverWorth", amount(worth()))
                .fact("leftoversOfUnknownWorth", leftovers(false))
                .fact("labour", amount(spending.labour()))
                .fact("total", amount(spending.total()))
                .fact("currency", spending.goods().currency().getCurrencyCode())
                .fact("proven", plan.optimality().isProven())
                .fact("costGap", plan.optimality().costGap().toPlainString());
        plan.insights().alone().ifPresent(alone -> answer
                .fact("onTargetMachineByMachine", alone.onTarget())
                .fact("totalMachineByMachine", amount(alone.total())));
        Map<String, Object> outcomes = new LinkedHashMap<>();
        for (Outcome outcome : Outcome.values()) {
            outcomes.put(outcome.name(), plan.count(outcome));
        }
        answer.fact("outcomes", outcomes);
    }

    private static String count(int number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }

    private static String amount(Money money) {
        return money.amount().toPlainString();
    }

    private long withTarget() {
        return plan.machines().stream().filter(each -> each.target().isPresent()).count();
    }

    private long onTargetBefore() {
        return plan.count(Outcome.ON_TARGET) + plan.count(Outcome.DONOR);
    }

    private long onTargetAfter() {
        return onTargetBefore() + plan.count(Outcome.REACHES_TARGET);
    }

    /** "8 modules and 2 continuity modules or blanks". */
    String pieces() {
        int fillers = bought(Filler.class);
        String modules = count(bought(ModuleKind.class), "module");
        return fillers == 0 ? modules
                : modules + " and " + (fillers == 1
                        ? "1 continuity module or blank" : fillers + " continuity modules or blanks");
    }

    private int bought(Class<? extends Piece> type) {
        return plan.purchases().stream().filter(each -> type.isInstance(each.offer().piece()))
                .mapToInt(Purchase::modules).sum();
    }

    private int leftover(Leftover.Origin origin) {
        return plan.leftovers().stream().filter(each -> each.origin() == origin).mapToInt(Leftover::count).sum();
    }

    private int leftovers(boolean known) {
        return plan.leftovers().stream().filter(each -> each.worth().isPresent() == known)
                .mapToInt(Leftover::count).sum();
    }

    private Money worth() {
        return plan.leftovers().stream().flatMap(each -> each.worth().stream())
                .reduce(Money.zero(plan.policy().currency()), Money::plus);
    }

    private Map<Obstacle.Kind, Integer> notHelped() {
        Map<Obstacle.Kind, Integer> counts = new TreeMap<>();
        plan.machines().stream().map(MachinePlan::obstacle).flatMap(Optional::stream)
                .forEach(obstacle -> counts.merge(obstacle.kind(), 1, Integer::sum));
        return counts;
    }
}
