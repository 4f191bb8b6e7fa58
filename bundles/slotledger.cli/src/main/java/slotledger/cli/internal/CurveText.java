package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;

/** A curve of budgets as a table with bars of characters, and as facts. */
final class CurveText {

    private static final int BAR = 40;
    private static final String LINE = "%14s  %10s  %9s  %9s  %14s  %s";

    private CurveText() {
    }

    /** "3 budgets so far: EUR 500.00 brings 90 machines on target, EUR 7500.00 brings 488". */
    static String soFar(BudgetCurve curve) {
        BudgetCurve.Point least = curve.points().get(0);
        BudgetCurve.Point most = curve.points().get(curve.points().size() - 1);
        String first = "%s brings %d machines on target".formatted(least.budget(), least.figures().onTarget());
        return curve.points().size() == 1 ? "one budget so far: " + first
                : "%d budgets so far: %s, %s brings %d".formatted(
                        curve.points().size(), first, most.budget(), most.figures().onTarget());
    }

    static void report(BudgetCurve curve, Answer.Builder answer) {
        String currency = curve.points().get(0).budget().currency().getCurrencyCode();
        answer.line(LINE.formatted("Budget, " + currency, "on target", "by weight", "at most", "to pay", "")
                .stripTrailing());
        long all = Math.max(1, curve.withTarget());
        List<Map<String, Object>> facts = new ArrayList<>();
        for (BudgetCurve.Point point : curve.points()) {
            Figures figures = point.figures();
            boolean isAsked = curve.asked().filter(point.budget()::equals).isPresent();
            answer.line(LINE.formatted(
                    point.budget().amount().toPlainString(),
                    figures.onTarget(),
                    figures.weight(),
                    figures.weightBound(),
                    figures.payable().amount().toPlainString(),
                    bar(figures, all) + (isAsked ? " <- the budget of the policy" : "")).stripTrailing());
            facts.add(fact(point));
        }
        boolean isBest = curve.points().stream().map(BudgetCurve.Point::figures)
                .allMatch(figures -> figures.weight() == figures.weightBound());
        answer.line("")
                .wrapped("Reading", "Each budget brings so many machines on target at least, for the money beside it; "
                        + "by weight no plan brings more than \"at most\". Budgets are for goods and delivery. A full "
                        + "bar is all machines with a target, which count " + curve.withTarget() + " by weight."
                        + last(curve))
                .wrapped("Proof", isBest ? "each line is the best that its budget allows"
                        : "where a bar goes on in dots, a plan that reaches so far is not ruled out; \"plan --budget\" "
                                + "looks for it");
        answer.fact("currency", currency).fact("withTarget", curve.withTarget()).fact("points", facts);
        curve.asked().ifPresent(asked -> answer.fact("asked", asked.amount().toPlainString()));
    }

    private static String last(BudgetCurve curve) {
        Figures most = curve.points().get(curve.points().size() - 1).figures();
        return most.weight() == most.weightBound() ? " More than the last budget brings no more." : "";
    }

    /** Signs for what is reached, dots up to what is possible at most. */
    private static String bar(Figures figures, long all) {
        int reached = (int) Math.min(BAR, figures.weight() * BAR / all);
        int possible = (int) Math.min(BAR, -Math.floorDiv(-figures.weightBound() * BAR, all));
        boolean isOpen = figures.weightBound() > figures.weight();
        return "#".repeat(reached) + (isOpen ? ".".repeat(Math.max(1, possible - reached)) : "");
    }

    private static Map<String, Object> fact(BudgetCurve.Point point) {
        Map<String, Object> fact = new LinkedHashMap<>();
        fact.put("budget", point.budget().amount().toPlainString());
        fact.putAll(FiguresText.facts(point.figures()));
        return fact;
    }
}
