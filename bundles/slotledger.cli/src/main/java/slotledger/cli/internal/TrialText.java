package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.app.Trial;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** What came of trying a module in a machine; sockets where it comes to the same stand together. */
final class TrialText {

    private final Answer.Builder answer;

    TrialText(Answer.Builder answer) {
        this.answer = answer;
    }

    void report(List<Trial> trials) {
        Map<String, List<Trial>> alike = new LinkedHashMap<>();
        trials.forEach(trial -> alike.computeIfAbsent(key(trial), one -> new ArrayList<>()).add(trial));
        alike.values().forEach(this::lines);
        answer.fact("trials", trials.stream().map(TrialText::facts).toList());
    }

    private void lines(List<Trial> trials) {
        Trial first = trials.get(0);
        Verdict verdict = first.verdict();
        String where = String.join(" or ", trials.stream().map(trial -> String.join(", ", trial.slots())).toList());
        answer.line("");
        Wrapped.behind("In ", where + condition(first)
                + (trials.size() == 1 ? "" : " (said here of " + String.join(", ", first.slots()) + ")"))
                .forEach(answer::line);
        answer.wrapped("Verdict", MachineText.word(verdict));
        answer.items("", VerdictText.objections(verdict));
        if (!verdict.blocks()) {
            answer.wrapped("Runs", MachineText.text(verdict.operation()));
            answer.wrapped("", verdict.operation().rateWhy());
            answer.items("Passes", VerdictText.passes(verdict, false));
        }
    }

    private static String condition(Trial trial) {
        List<String> more = trial.filled().stream().filter(slot -> !trial.slots().contains(slot)).toList();
        String text = more.isEmpty()
                ? trial.slots().size() > 1 ? ", all of them with this module" : ""
                : ", with the same module in " + String.join(", ", more) + " too";
        return text + (trial.othersStay() ? "" : ", and all other modules taken out");
    }

    /** What a verdict comes to: its weight, how it runs, and which rules object. */
    private static String key(Trial trial) {
        Verdict verdict = trial.verdict();
        StringBuilder key = new StringBuilder().append(verdict.weight());
        key.append(trial.filled().size() == 1 && trial.othersStay() ? "" : trial.filled() + " " + trial.othersStay());
        if (!verdict.blocks()) {
            Operation runs = verdict.operation();
            key.append(runs.installed()).append(runs.usable()).append(runs.mode()).append(runs.rate());
        }
        verdict.reasons().stream()
                .filter(reason -> reason.weight() == Weight.BLOCKS
                        || !verdict.blocks() && reason.weight() != Weight.PASSES)
                .map(reason -> reason.weight() + reason.rule())
                .distinct()
                .sorted()
                .forEach(key::append);
        return key.toString();
    }

    private static Map<String, Object> facts(Trial trial) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("slots", trial.slots());
        facts.put("filled", trial.filled());
        facts.put("othersStay", trial.othersStay());
        facts.put("verdict", VerdictText.facts(trial.verdict()));
        return facts;
    }
}
