package slotledger.cli.internal;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.model.project.Entry;
import slotledger.model.project.EntryWords;
import slotledger.model.project.Journal;
import slotledger.model.project.ProjectState;

/** A project's journal in words and as facts. */
final class HistoryText {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private final Journal journal;
    private final EntryWords words;
    private final ZoneId zone;

    HistoryText(Journal journal, ZoneId zone) {
        this.journal = journal;
        this.words = new EntryWords(journal);
        this.zone = zone;
    }

    void report(Answer.Builder answer) {
        List<Object> facts = new ArrayList<>();
        for (Entry entry : journal.entries()) {
            line(entry).forEach(answer::line);
            facts.add(facts(entry));
        }
        ProjectState state = journal.state();
        answer.line("");
        answer.item("Now", state.parts().isEmpty() ? "no files yet" : state.parts().values().stream()
                .map(Object::toString).collect(Collectors.joining(", ")));
        answer.item("", state.plans().size() + (state.plans().size() == 1 ? " plan, " : " plans, ")
                + state.decisions().size() + (state.decisions().size() == 1 ? " decision" : " decisions"));
        answer.fact("title", state.title()).fact("entries", facts);
        Map<String, Object> parts = new LinkedHashMap<>();
        state.parts().forEach((part, version) -> parts.put(part.id(), version.number()));
        answer.fact("parts", parts);
        answer.fact("plans", state.plans().stream().map(plan -> plan.number()).toList());
    }

    /** "  12  2026-11-28 14:02  anna  brought in fleet 2 (fleet.xlsx)", and below it why. */
    List<String> line(Entry entry) {
        boolean holds = journal.holds(entry.number());
        List<String> lines = new ArrayList<>();
        String beginning = "%4d  %s  %s  ".formatted(entry.number(), TIME.format(entry.made().atZone(zone)),
                entry.author().who());
        lines.addAll(Wrapped.behind(beginning, words(entry) + (holds ? "" : " [taken back]")
                + (journal.isDatedBeforeItsPredecessor(entry.number())
                        ? " [dated before the entry above: the clock of a computer was wrong]" : "")));
        if (!entry.author().why().isEmpty()) {
            lines.addAll(Wrapped.behind(" ".repeat(beginning.length()) + "why: ", entry.author().why()));
        }
        return lines;
    }

    /** "entry 12 (2026-11-28 14:02): anna brought in fleet 2 (fleet.xlsx)". */
    String sentence(Entry entry) {
        return "entry " + entry.number() + " (" + TIME.format(entry.made().atZone(zone)) + "): "
                + entry.author().who() + " " + words(entry);
    }

    String words(Entry entry) {
        return words.words(entry);
    }

    private Map<String, Object> facts(Entry entry) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("entry", entry.number());
        facts.put("made", entry.made().toString());
        facts.put("who", entry.author().who());
        facts.put("why", entry.author().why());
        facts.put("what", words(entry));
        facts.put("holds", journal.holds(entry.number()));
        return facts;
    }
}
