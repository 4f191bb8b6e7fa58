package slotledger.store.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.UUID;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/**
 * What lies in a packed project, a ZIP file that needs no database to read: project.json, journal.jsonl with one entry
 * a line, and originals/ with a file for each, named by its SHA-256.
 */
final class PackFormat {

    static final String HEAD = "project.json";
    static final String JOURNAL = "journal.jsonl";
    static final String ORIGINALS = "originals/";

    private static final int FORM = 1;

    private PackFormat() {
    }

    static String head(Mark mark) {
        ObjectNode node = ChangeJson.object();
        node.put("slotledgerProject", FORM).put("id", mark.id().toString()).put("entries", mark.entries())
                .put("seal", mark.seal());
        return ChangeJson.text(node) + "\n";
    }

    /** @throws IllegalArgumentException where something is missing */
    static Mark head(String text, String where) throws StoreException {
        JsonNode node = ChangeJson.parse(text);
        long form = ChangeJson.number(node, "slotledgerProject");
        if (form > FORM) {
            throw new StoreException(Trouble.NEWER, "The packed project " + where + " was written by a newer Slotledger"
                    + " (its form is " + form + ", this program knows up to " + FORM + "). Use that one.");
        }
        return new Mark(UUID.fromString(ChangeJson.text(node, "id")), ChangeJson.number(node, "entries"),
                ChangeJson.text(node, "seal"));
    }

    static String line(EntryRow row) {
        ObjectNode node = ChangeJson.object();
        node.put("number", row.number()).put("made", row.made()).put("who", row.who()).put("why", row.why())
                .put("kind", row.kind()).put("change", row.change()).put("seal", row.seal());
        return ChangeJson.text(node) + "\n";
    }

    /** @throws IllegalArgumentException where something is missing */
    static EntryRow row(String line) {
        JsonNode node = ChangeJson.parse(line);
        return new EntryRow(ChangeJson.number(node, "number"), ChangeJson.text(node, "made"),
                ChangeJson.text(node, "who"), ChangeJson.text(node, "why"), ChangeJson.text(node, "kind"),
                ChangeJson.text(node, "change"), ChangeJson.text(node, "seal"));
    }
}
