package slotledger.cli.internal;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.ProjectState;

/** A project's journal in words and as facts. */
final class HistoryText {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private final Journal journal;
    private final ZoneId zone;

    HistoryText(Journal journal, ZoneId zone) {
        this.journal = journal;
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
        lines.addAll(Wrapped.behind(beginning, words(entry) + (holds ? "" : " [taken back]")));
        if (!entry.author().why().isEmpty()) {
            lines.addAll(Wrapped.behind(" ".repeat(beginning.length()) + "why: ", entry.author().why()));
        }
        return lines;
    }

    String words(Entry entry) {
        Change change = entry.change();
        if (change instanceof Change.Created created) {
            return "made the project \"" + created.title() + "\"";
        }
        if (change instanceof Change.Imported imported) {
            Map<String, Integer> numbers = numbers(entry);
            return "brought in " + imported.parts().entrySet().stream()
                    .map(part -> part.getKey().id() + " " + numbers.get(part.getKey().id()) + files(part.getValue()))
                    .collect(Collectors.joining(", "));
        }
        if (change instanceof Change.Planned planned) {
            return "kept plan %d of \"%s\" for %s, made from the files of entry %d".formatted(planNumber(entry),
                    planned.title(), planned.date(), planned.basis());
        }
        if (change instanceof Change.Decided decided) {
            return words(decided.decision());
        }
        if (change instanceof Change.TakenBack back) {
            return "took back entry " + back.entry();
        }
        if (change instanceof Change.Traded traded) {
            return OrderText.words(traded.event());
        }
        if (change instanceof Change.Rounds || change instanceof Change.Worked) {
            return WorkText.words(change);
        }
        return "restored entry " + ((Change.Restored) change).entry();
    }

    private static String words(Decision decision) {
        if (decision instanceof Decision.Correction correction) {
            return "corrected the %s of %s from \"%s\" to \"%s\"".formatted(correction.fact().text(),
                    correction.machine(), correction.seen(), correction.value());
        }
        if (decision instanceof Decision.Mute mute) {
            return "muted " + mute.code() + (mute.machine().isEmpty() ? "" : " of " + mute.machine())
                    + (mute.seen().isEmpty() ? "" : " for \"" + mute.seen() + "\"");
        }
        Decision.Pinned pin = (Decision.Pinned) decision;
        return "pinned " + pin.machine() + (pin.slots().isEmpty() ? " as it is" : ": " + pin.slots().entrySet().stream()
                .map(slot -> slot.getKey() + " " + slot.getValue()).collect(Collectors.joining(", ")));
    }

    private static String files(List<Original> files) {
        return switch (files.size()) {
            case 0 -> " (taken out)";
            case 1 -> " (" + files.get(0).name() + ")";
            default -> " (" + files.size() + " files)";
        };
    }

    /** Version numbers count every import, whether it was taken back or not. */
    private Map<String, Integer> numbers(Entry until) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        journal.entries().stream().limit(until.number()).map(Entry::change)
                .filter(Change.Imported.class::isInstance).map(Change.Imported.class::cast)
                .forEach(imported -> imported.parts().keySet()
                        .forEach(part -> numbers.merge(part.id(), 1, Integer::sum)));
        return numbers;
    }

    private long planNumber(Entry until) {
        return journal.entries().stream().limit(until.number())
                .filter(entry -> entry.change() instanceof Change.Planned).count();
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
