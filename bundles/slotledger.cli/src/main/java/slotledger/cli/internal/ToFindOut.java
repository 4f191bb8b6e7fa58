package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Arithmetic.BoundBy;
import slotledger.model.verdict.Arithmetic.RateBound;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;

/** What somebody should find out, what most hangs on first. A no doesn't hang on a missing fact. */
final class ToFindOut {

    private final Set<String> slots = new LinkedHashSet<>();
    private final Set<String> rules = new LinkedHashSet<>();
    private int verdicts;

    private ToFindOut() {
    }

    /**
     * The missing facts of verdicts, and of a rate that is not known.
     *
     * @param now how the machine comes to run as it does
     */
    static void lines(Answer.Builder answer, List<Verdict> verdicts, Arithmetic now, Optional<Rate> rate) {
        Map<MissingFact, ToFindOut> facts = new LinkedHashMap<>();
        verdicts.stream().filter(verdict -> !verdict.blocks())
                .forEach(verdict -> verdict.reasons().forEach(reason -> add(facts, reason)));
        if (rate.isEmpty()) {
            now.rates().stream().filter(bound -> !bound.sure()).map(RateBound::by).distinct()
                    .forEach(by -> behind(by).ifPresent(fact -> {
                        ToFindOut found = facts.computeIfAbsent(fact, one -> new ToFindOut());
                        found.verdicts++;
                        found.rules.add("the rate");
                    }));
        }
        List<Map.Entry<MissingFact, ToFindOut>> sorted = new ArrayList<>(facts.entrySet());
        sorted.sort(Comparator.comparingInt((Map.Entry<MissingFact, ToFindOut> entry) -> -entry.getValue().verdicts));
        if (!sorted.isEmpty()) {
            answer.line("").line("To find out, what most verdicts hang on first:");
        }
        List<Object> list = new ArrayList<>();
        for (Map.Entry<MissingFact, ToFindOut> entry : sorted) {
            entry.getValue().line(answer, list.size() + 1, entry.getKey());
            Map<String, Object> one = new LinkedHashMap<>(VerdictText.facts(entry.getKey()));
            one.put("verdicts", entry.getValue().verdicts);
            one.put("rules", List.copyOf(entry.getValue().rules));
            one.put("slots", List.copyOf(entry.getValue().slots));
            list.add(one);
        }
        answer.fact("toFindOut", list);
    }

    /** The fact that keeps a bound of the rate from being sure. */
    private static Optional<MissingFact> behind(BoundBy by) {
        return switch (by) {
            case PROCESSOR -> Optional.of(MissingFact.PROCESSOR);
            case RANKS -> Optional.of(MissingFact.RANKS);
            case VOLTAGE -> Optional.of(MissingFact.VOLTAGE);
            case MODULE -> Optional.of(MissingFact.RATE);
            case BOARD, MODULES_PER_CHANNEL, FILL_TABLE -> Optional.empty();
        };
    }

    private static void add(Map<MissingFact, ToFindOut> facts, Reason reason) {
        reason.missing().ifPresent(fact -> {
            ToFindOut found = facts.computeIfAbsent(fact, one -> new ToFindOut());
            found.verdicts++;
            found.slots.addAll(reason.slots());
            found.rules.add(reason.rule());
        });
        reason.because().forEach(finer -> add(facts, finer));
    }

    private void line(Answer.Builder answer, int number, MissingFact fact) {
        String where = slots.isEmpty() ? "" : " in " + String.join(", ", slots);
        Wrapped.behind("%4d. ".formatted(number), fact.text() + where + " (for " + verdicts
                + (verdicts == 1 ? " verdict of " : " verdicts of ") + String.join(", ", rules) + "). "
                + fact.cheapestWay()).forEach(answer::line);
    }
}
