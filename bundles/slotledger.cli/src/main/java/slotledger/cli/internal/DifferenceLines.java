package slotledger.cli.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slotledger.model.difference.Difference;
import slotledger.model.difference.DifferenceText;
import slotledger.model.difference.LineChange;
import slotledger.model.difference.MachineChange;
import slotledger.model.difference.Term;
import slotledger.model.plan.Plan;

/** What is different between two plans, as lines and as facts. */
final class DifferenceLines {

    private final Difference difference;
    private final DifferenceText text;

    DifferenceLines(Difference difference) {
        this.difference = difference;
        this.text = new DifferenceText(difference);
    }

    /**
     * Says it.
     *
     * @param most so many machines are shown as lines; the facts name all
     */
    void report(Answer.Builder answer, int most) {
        answer.item("Earlier", name(difference.before())).item("Later", name(difference.after()));
        if (difference.isNone()) {
            answer.item("Changes", DifferenceText.NONE);
        }
        answer.items("Money", text.money().stream().map(amount -> amount.name() + ": " + amount.after()
                + instead(amount.before().toString(), amount.words())).toList());
        answer.items("Numbers", text.counts().stream().map(count -> count.name() + ": " + count.after()
                + instead(String.valueOf(count.before()), count.words())).toList());
        answer.items("Terms", difference.terms().stream().map(term -> term.what() + ": " + term.after()
                + " instead of " + term.before()).toList());
        answer.items("Purchases", difference.lines().stream().map(line -> line.offer().supplier() + ", "
                + line.offer().part() + " (" + DifferenceText.brief(line.offer().piece()) + ") "
                + DifferenceText.line(line)).toList());
        difference.machines().stream().limit(most).forEach(change -> machine(answer, change));
        if (difference.machines().size() > most) {
            answer.item("", (difference.machines().size() - most)
                    + " more machines change; the workbook and --json name them all");
        }
        answer.fact("same", difference.isNone());
        answer.fact("money", facts(text.money(), DifferenceText.Amount::name, amount -> Map.of(
                "before", amount.before().amount().toPlainString(), "after", amount.after().amount().toPlainString())));
        answer.fact("numbers", facts(text.counts(), DifferenceText.Count::name, count -> Map.of(
                "before", count.before(), "after", count.after())));
        answer.fact("terms", difference.terms().stream().map(DifferenceLines::facts).toList());
        answer.fact("purchases", difference.lines().stream().map(DifferenceLines::facts).toList());
        answer.fact("machines", difference.machines().stream().map(DifferenceLines::facts).toList());
    }

    private static String name(Plan plan) {
        return plan.title() + ", plan of " + plan.date();
    }

    private static String instead(String before, String words) {
        return words.equals("no change") ? " (no change)" : " instead of " + before + " (" + words + ")";
    }

    private static void machine(Answer.Builder answer, MachineChange change) {
        answer.wrapped("Machine", change.machine().tag() + ", " + change.machine().where() + ": "
                + DifferenceText.after(change) + "; earlier: " + DifferenceText.before(change) + ".");
        answer.wrapped("", change.why());
    }

    private static <T> Map<String, Object> facts(
            List<T> values, Function<T, String> name, Function<T, Object> fact) {
        Map<String, Object> facts = new LinkedHashMap<>();
        values.forEach(value -> facts.put(name.apply(value), fact.apply(value)));
        return facts;
    }

    private static Map<String, Object> facts(Term term) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("what", term.what());
        facts.put("before", term.before());
        facts.put("after", term.after());
        return facts;
    }

    private static Map<String, Object> facts(LineChange line) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("offer", line.offer().id());
        facts.put("change", line.kind().name());
        facts.put("packsBefore", line.packsBefore());
        facts.put("packsAfter", line.packsAfter());
        facts.put("moneyChange", DifferenceText.amount(line).change().amount().toPlainString());
        return facts;
    }

    private static Map<String, Object> facts(MachineChange change) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("machine", change.machine().tag().value());
        facts.put("before", DifferenceText.before(change));
        facts.put("after", DifferenceText.after(change));
        facts.put("onTargetBefore", change.before().filter(MachineChange::isOnTarget).isPresent());
        facts.put("onTargetAfter", change.after().filter(MachineChange::isOnTarget).isPresent());
        facts.put("why", change.why());
        return facts;
    }
}
