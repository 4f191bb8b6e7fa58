package slotledger.catalog.internal.match;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Place;

/** Finds names that two boards of one maker share, so that an inventory can't mean either by them. */
public final class SharedNames {

    private SharedNames() {
    }

    public static List<Finding> findings(Collection<BoardEntry> entries) {
        List<Finding> findings = new ArrayList<>();
        Map<String, BoardEntry> owners = new LinkedHashMap<>();
        for (BoardEntry entry : entries) {
            String maker = Names.normalisedMaker(entry.board().maker());
            entry.names().map(Names::normalised).distinct().forEach(name -> {
                BoardEntry owner = owners.putIfAbsent(maker + " " + name, entry);
                if (owner != null) {
                    findings.add(shared(entry, owner, name));
                }
            });
        }
        return findings;
    }

    private static Finding shared(BoardEntry entry, BoardEntry owner, String name) {
        String seen = entry.names().filter(written -> Names.normalised(written).equals(name)).findFirst().orElse(name);
        return new Finding(Severity.WARNING, "board-name-shared", Place.ofFile(entry.file()), Optional.empty(), seen,
                "The boards %s and %s go by the same name.".formatted(owner.board().id(), entry.board().id()),
                "names that only one board of a maker has",
                "Delete the name from the file of the board that isn't called so.");
    }
}
