package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;

/** A verdict in words and as facts. */
final class VerdictText {

    private VerdictText() {}

    /** A line for each reason, its source and remedy below it. */
    static List<String> lines(Verdict verdict) {
        List<String> lines = new ArrayList<>();
        verdict.reasons().forEach(reason -> add(lines, reason, ""));
        return lines;
    }

    private static void add(List<String> lines, Reason reason, String indent) {
        lines.add(indent + String.format("%-8s %s", reason.weight().text(), reason.sentence())
                + "  [" + reason.rule() + "; " + reason.source() + "]");
        if (!reason.remedy().isEmpty()) {
            lines.add(indent + "         " + reason.remedy());
        }
        reason.because().forEach(finer -> add(lines, finer, indent + "  "));
    }

    static Map<String, Object> facts(Verdict verdict) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("weight", verdict.weight().text());
        facts.put("installed", verdict.operation().installed().toString());
        facts.put("usable", verdict.operation().usable().toString());
        facts.put("mode", verdict.operation().mode().toString());
        verdict.operation().rate().ifPresent(rate -> facts.put("rate", rate.megatransfers()));
        facts.put("reasons", verdict.reasons().stream().map(VerdictText::facts).toList());
        return facts;
    }

    private static Map<String, Object> facts(Reason reason) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("rule", reason.rule());
        facts.put("weight", reason.weight().text());
        facts.put("sentence", reason.sentence());
        facts.put("slots", reason.slots());
        facts.put("source", reason.source().toString());
        facts.put("remedy", reason.remedy());
        facts.put("because", reason.because().stream().map(VerdictText::facts).toList());
        return facts;
    }
}
