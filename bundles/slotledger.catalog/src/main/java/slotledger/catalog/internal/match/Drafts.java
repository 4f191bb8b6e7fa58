package slotledger.catalog.internal.match;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;

/** A board drafted from firmware gives way to one that somebody wrote from a document, and this is said. */
public final class Drafts {

    private Drafts() {
    }

    public static boolean isDraft(BoardEntry entry) {
        return entry.board().source().ground() == Ground.FIRMWARE;
    }

    /** Takes out drafts of boards that go by a name of a board that is no draft. */
    public static void giveWay(Map<BoardId, BoardEntry> entries, List<Finding> findings) {
        Map<String, BoardEntry> documented = new HashMap<>();
        for (BoardEntry entry : entries.values()) {
            if (!isDraft(entry)) {
                entry.makers().forEach(maker -> entry.names().forEach(name ->
                        documented.putIfAbsent(key(maker, name), entry)));
            }
        }
        entries.values().removeIf(entry -> {
            Optional<BoardEntry> better = !isDraft(entry) ? Optional.empty()
                    : entry.makers().flatMap(maker -> entry.names().map(name -> documented.get(key(maker, name))))
                            .filter(other -> other != null).findFirst();
            better.ifPresent(other -> findings.add(behind(entry, other)));
            return better.isPresent();
        });
    }

    public static Finding behind(BoardEntry draft, BoardEntry documented) {
        return new Finding(Severity.NOTE, "draft-behind-document", Place.ofFile(draft.file()), Optional.empty(),
                draft.board().name(), "This draft of firmware gives way to the board in %s (%s).".formatted(
                        documented.file(), documented.board().source()), "", "Delete the draft.");
    }

    private static String key(String maker, String name) {
        return Names.normalisedMaker(maker) + " " + Names.normalised(name);
    }
}
