package slotledger.model.project;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import slotledger.model.delivery.TradeWords;
import slotledger.model.work.WorkWords;

/** What entries of a journal did, in words. */
public final class EntryWords {

    private final Journal journal;

    public EntryWords(Journal journal) {
        this.journal = Objects.requireNonNull(journal, "journal");
    }

    /** "brought in fleet 2 (fleet.xlsx)", to go on after a person's name. */
    public String words(Entry entry) {
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
            return TradeWords.of(traded.event());
        }
        if (change instanceof Change.Rounds made) {
            return WorkWords.of(made.plan(), made.rounds());
        }
        if (change instanceof Change.Worked worked) {
            return WorkWords.of(worked.events());
        }
        return "restored entry " + ((Change.Restored) change).entry();
    }

    /** "pinned K-17 as it is", to go on after a person's name. */
    public static String words(Decision decision) {
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
}
