package slotledger.workbench.internal.slots;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.workbench.internal.Texts;

/** What is in a slot, on as many short lines as there are facts; the amount first. */
final class ContentLines {

    private static final Pattern FACTS = Pattern.compile(", ");
    private static final int FACTS_A_LINE = 2;

    private ContentLines() {
    }

    static List<String> of(SlotContent content) {
        if (content instanceof SlotContent.Holds holds) {
            return of(holds.kind());
        }
        if (content instanceof SlotContent.Unread unread) {
            return List.of(Texts.unknown, "“" + unread.text() + "”");
        }
        return List.of(content.isEmpty() ? Texts.slot_nothing : content.toString());
    }

    /** "8 GB DDR4-2666 SO-DIMM, 1Rx8, non-ECC, unbuffered" becomes "8 GB", "DDR4-2666 SO-DIMM", "1Rx8, non-ECC", ... */
    private static List<String> of(ModuleKind kind) {
        String amount = kind.capacity().toString();
        String rest = kind.toString().substring(amount.length()).strip();
        List<String> facts = FACTS.splitAsStream(rest).filter(fact -> !fact.isBlank()).toList();
        List<String> lines = new ArrayList<>(List.of(amount));
        boolean named = kind.generation().isPresent() || kind.rate().isPresent() || kind.form().isPresent();
        if (named) {
            lines.add(facts.get(0));
        }
        for (int at = named ? 1 : 0; at < facts.size(); at += FACTS_A_LINE) {
            lines.add(String.join(", ", facts.subList(at, Math.min(facts.size(), at + FACTS_A_LINE))));
        }
        return lines;
    }
}
