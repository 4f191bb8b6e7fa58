package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Insights;
import slotledger.model.plan.Plan;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.plan.WithoutOffer;

/** The next euro and the price of doing without, in words and as facts; nothing where nobody asked. */
final class InsightsText {

    private static final int SHOWN = 3;

    private final Figures plan;
    private final Insights insights;

    InsightsText(Plan plan) {
        this.plan = Figures.of(plan);
        this.insights = plan.insights();
    }

    void report(Answer.Builder answer) {
        if (insights.less().isEmpty()) {
            return;
        }
        List<String> more = insights.more().stream().map(this::more).toList();
        answer.items("More money", more.isEmpty() ? List.of("brings no more machines on target") : more);
        answer.items("Less money", insights.less().stream().map(this::less).toList());
        List<String> dearest = insights.without().stream()
                .sorted(Comparator.comparingLong((WithoutOffer each) -> each.figures().weight())
                        .thenComparing(each -> each.figures().cost(), Comparator.reverseOrder()))
                .limit(SHOWN)
                .map(each -> each.offer() + ": " + FiguresText.change(each.figures(), plan))
                .toList();
        answer.items("Do without", dearest);
        if (insights.without().size() > SHOWN) {
            answer.item("", "all lines on sheet What binds of the order workbook");
        }
        answer.items("Decisions", insights.choices().stream()
                .map(each -> "without " + each.choice() + ": " + FiguresText.change(each.figures(), plan)).toList());
        answer.fact("less", insights.less().stream().map(InsightsText::fact).toList());
        answer.fact("more", insights.more().stream().map(InsightsText::fact).toList());
        List<Map<String, Object>> without = new ArrayList<>();
        for (WithoutOffer each : insights.without()) {
            Map<String, Object> fact = new LinkedHashMap<>();
            fact.put("offer", each.offer());
            fact.putAll(FiguresText.facts(each.figures()));
            without.add(fact);
        }
        answer.fact("without", without);
        List<Map<String, Object>> choices = new ArrayList<>();
        for (WithoutChoice each : insights.choices()) {
            Map<String, Object> fact = new LinkedHashMap<>();
            fact.put("choice", each.choice());
            fact.putAll(FiguresText.facts(each.figures()));
            choices.add(fact);
        }
        answer.fact("choices", choices);
    }

    private String more(BudgetStep step) {
        return "%s, %s more than to pay now: %s".formatted(step.budget(),
                step.budget().minus(plan.payable()), onTarget(step));
    }

    private String less(BudgetStep step) {
        return step.figures().weight() == plan.weight()
                ? step.budget() + " is the smallest budget that does as much"
                : "%s: %s".formatted(step.budget(), onTarget(step));
    }

    /** "490 machines on target instead of 489, by weight 1100 instead of 1096". */
    private String onTarget(BudgetStep step) {
        return "%d machines on target instead of %d, by weight %d instead of %d".formatted(
                step.figures().onTarget(), plan.onTarget(), step.figures().weight(), plan.weight());
    }

    private static Map<String, Object> fact(BudgetStep step) {
        Map<String, Object> fact = new LinkedHashMap<>();
        fact.put("budget", step.budget().amount().toPlainString());
        fact.put("smallest", step.isSmallest());
        fact.put("gained", step.gained().stream().map(AssetTag::value).toList());
        fact.put("lost", step.lost().stream().map(AssetTag::value).toList());
        fact.putAll(FiguresText.facts(step.figures()));
        return fact;
    }
}
