package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import slotledger.app.ReadingOrder;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** A verdict in words and as facts. */
final class VerdictText {

    private static final int WORD = 9;

    private VerdictText() {}

    /**
     * The rules that object, worst first: what each says, who says so, and what to do. Below a no, whatever else there
     * is to say is only named. What is said of several slots in the same words stands once.
     */
    static List<String> objections(Verdict verdict) {
        Map<String, List<Reason>> alike = new LinkedHashMap<>();
        Map<Weight, Set<String>> besides = new TreeMap<>(Comparator.reverseOrder());
        for (Reason reason : ReadingOrder.of(verdict)) {
            if (verdict.blocks() && reason.weight() != Weight.BLOCKS && reason.weight() != Weight.PASSES) {
                besides.computeIfAbsent(reason.weight(), one -> new LinkedHashSet<>()).add(reason.rule());
            } else if (reason.weight() != Weight.PASSES) {
                alike.computeIfAbsent(key(reason), one -> new ArrayList<>()).add(reason);
            }
        }
        List<String> lines = new ArrayList<>();
        alike.values().forEach(same -> lines.addAll(tree(same.get(0), likewise(same), "")));
        besides.forEach((weight, rules) -> lines.addAll(
                behind("besides  ", weight.text() + " by " + String.join(", ", rules) + ".")));
        return lines;
    }

    private static String key(Reason reason) {
        String sentence = reason.sentence();
        for (String slot : reason.slots()) {
            sentence = sentence.replaceAll("\\bslot " + Pattern.quote(slot) + "(?![\\p{L}\\p{N}])", "slot *");
        }
        return reason.rule() + reason.weight() + sentence + reason.source() + reason.remedy();
    }

    private static String likewise(List<Reason> same) {
        List<String> others = same.stream().skip(1).flatMap(reason -> reason.slots().stream()).distinct().toList();
        return others.isEmpty() ? "" : " Likewise in " + String.join(", ", others) + ".";
    }

    /**
     * Every rule that passes, by who says so.
     *
     * @param sentences with the sentence of each; else only its id
     */
    static List<String> passes(Verdict verdict, boolean sentences) {
        Map<String, List<Reason>> bySource = new LinkedHashMap<>();
        for (Reason reason : verdict.reasons(Weight.PASSES)) {
            bySource.computeIfAbsent(reason.source().toString(), one -> new ArrayList<>()).add(reason);
        }
        List<String> lines = new ArrayList<>();
        bySource.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<String, List<Reason>> entry) -> -entry.getValue().size()))
                .forEach(entry -> passes(lines, entry.getKey(), entry.getValue(), sentences));
        return lines;
    }

    private static void passes(List<String> lines, String source, List<Reason> reasons, boolean sentences) {
        String by = reasons.get(0).source().document().isBlank() ? "" : "by ";
        if (!sentences) {
            lines.addAll(behind("", by + source + ": "
                    + String.join(", ", reasons.stream().map(Reason::rule).toList())));
            return;
        }
        lines.addAll(behind("", by + source + ":"));
        int width = reasons.stream().mapToInt(reason -> reason.rule().length()).max().orElse(0) + 2;
        for (Reason reason : reasons) {
            lines.addAll(behind(("  %-" + width + "s").formatted(reason.rule()), reason.sentence()));
        }
    }

    private static List<String> behind(String beginning, String text) {
        return Wrapped.behind(beginning, text, Wrapped.WIDTH - Console.INDENT);
    }

    private static List<String> tree(Reason reason, String more, String indent) {
        String word = indent + ("%-" + WORD + "s").formatted(reason.weight().text());
        List<String> lines = new ArrayList<>(behind(word, reason.sentence() + more));
        lines.addAll(below(reason, " ".repeat(word.length())));
        return lines;
    }

    /** A reason without its weight. */
    static List<String> reason(Reason reason, String indent) {
        List<String> lines = new ArrayList<>(behind(indent, reason.sentence()));
        lines.addAll(below(reason, indent));
        return lines;
    }

    private static List<String> below(Reason reason, String indent) {
        List<String> lines = new ArrayList<>(
                behind(indent, "[" + reason.rule() + "; " + reason.source() + "]"));
        reason.missing().ifPresent(fact -> lines.addAll(behind(indent + "Missing: ", fact.text() + ".")));
        if (!reason.remedy().isEmpty()) {
            lines.addAll(behind(indent + (reason.weight() == Weight.UNKNOWN ? "To find it: " : "To do: "),
                    reason.remedy()));
        }
        reason.because().forEach(finer -> lines.addAll(tree(finer, "", indent + "- ")));
        return lines;
    }

    static Map<String, Object> facts(Verdict verdict) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("weight", verdict.weight().text());
        facts.put("installed", verdict.operation().installed().toString());
        facts.put("addressable", verdict.operation().addressable().toString());
        facts.put("usable", verdict.operation().usable().toString());
        facts.put("mode", verdict.operation().mode().toString());
        facts.put("channels", verdict.operation().mode().channels());
        verdict.operation().rate().ifPresent(rate -> facts.put("rate", rate.megatransfers()));
        facts.put("ecc", verdict.operation().ecc());
        facts.put("reasons", verdict.reasons().stream().map(VerdictText::facts).toList());
        return facts;
    }

    static Map<String, Object> facts(Reason reason) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("rule", reason.rule());
        facts.put("weight", reason.weight().text());
        facts.put("sentence", reason.sentence());
        facts.put("slots", reason.slots());
        facts.put("source", reason.source().toString());
        facts.put("remedy", reason.remedy());
        reason.missing().ifPresent(fact -> facts.put("missing", facts(fact)));
        facts.put("because", reason.because().stream().map(VerdictText::facts).toList());
        return facts;
    }

    static Map<String, Object> facts(MissingFact fact) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("fact", fact.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        facts.put("text", fact.text());
        facts.put("cheapestWay", fact.cheapestWay());
        return facts;
    }
}
