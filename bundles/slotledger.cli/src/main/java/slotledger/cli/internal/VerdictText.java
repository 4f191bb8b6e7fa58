package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** A verdict in words and as facts. */
final class VerdictText {

    private static final int WORD = 9;

    private VerdictText() {}

    /** Every rule, worst first: its sentence, who says so, and what to do. */
    static List<String> lines(Verdict verdict, String indent) {
        List<String> lines = new ArrayList<>();
        for (Reason reason : verdict.reasons()) {
            lines.addAll(tree(reason, indent));
        }
        return lines;
    }

    private static List<String> tree(Reason reason, String indent) {
        String word = "%-" + WORD + "s";
        List<String> lines = new ArrayList<>(
                Wrapped.behind(indent + word.formatted(reason.weight().text()), reason.sentence()));
        lines.addAll(below(reason, indent + " ".repeat(WORD)));
        return lines;
    }

    /** A reason without its weight. */
    static List<String> reason(Reason reason, String indent) {
        List<String> lines = new ArrayList<>(Wrapped.behind(indent, reason.sentence()));
        lines.addAll(below(reason, indent));
        return lines;
    }

    private static List<String> below(Reason reason, String indent) {
        List<String> lines = new ArrayList<>(
                Wrapped.behind(indent, "[" + reason.rule() + "; " + reason.source() + "]"));
        reason.missing().ifPresent(fact ->
                lines.addAll(Wrapped.behind(indent + "Missing: ", fact.text() + ".")));
        if (!reason.remedy().isEmpty()) {
            lines.addAll(Wrapped.behind(indent + (reason.weight() == Weight.UNKNOWN ? "To find it: " : "To do: "),
                    reason.remedy()));
        }
        reason.because().forEach(finer -> lines.addAll(tree(finer, indent + "- ")));
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
