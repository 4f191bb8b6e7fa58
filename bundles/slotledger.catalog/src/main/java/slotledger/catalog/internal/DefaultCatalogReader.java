package slotledger.catalog.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import slotledger.catalog.CatalogException;
import slotledger.catalog.CatalogReader;
import slotledger.catalog.CatalogReading;
import slotledger.catalog.internal.file.BoardFolder;
import slotledger.catalog.internal.file.BoardReading;
import slotledger.catalog.internal.match.BoardEntry;
import slotledger.catalog.internal.match.DefaultCatalog;
import slotledger.catalog.internal.match.Drafts;
import slotledger.catalog.internal.match.SharedNames;
import slotledger.catalog.spi.BoardFile;
import slotledger.catalog.spi.BoardSource;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Place;

/** Reads the boards of all board sources, then those of the folders. */
@Component
public final class DefaultCatalogReader implements CatalogReader {

    private final List<BoardSource> sources;

    /** @param sources lowest service ranking first, as Declarative Services hands them over */
    @Activate
    public DefaultCatalogReader(@Reference(policyOption = ReferencePolicyOption.GREEDY) List<BoardSource> sources) {
        this.sources = List.copyOf(sources);
    }

    @Override
    public CatalogReading read(List<Path> folders) throws CatalogException {
        List<Finding> findings = new ArrayList<>();
        Map<BoardId, BoardEntry> entries = new LinkedHashMap<>();
        for (BoardSource source : sources) {
            readSource(source, findings).forEach(file -> readFile(file, entries, findings));
        }
        for (Path folder : folders) {
            BoardFolder.read(folder, findings).forEach(file -> readFile(file, entries, findings));
        }
        Drafts.giveWay(entries, findings);
        findings.addAll(SharedNames.findings(entries.values()));
        return new CatalogReading(new DefaultCatalog(entries.values()), findings);
    }

    private static List<BoardFile> readSource(BoardSource source, List<Finding> findings) {
        try {
            return List.copyOf(source.files());
        } catch (IOException | RuntimeException e) {
            // A plug-in's fault must not take a project's own boards away.
            findings.add(new Finding(Severity.ERROR, "board-source-unreadable", Place.NOWHERE, Optional.empty(),
                    source.getClass().getName(), "A source of boards can't be read: %s.".formatted(e.getMessage()), "",
                    "Its boards are missing from the catalog. Remove the drop-in it comes in, or ask its author."));
            return List.of();
        }
    }

    private static void readFile(BoardFile file, Map<BoardId, BoardEntry> entries, List<Finding> findings) {
        BoardReading reading = BoardReading.of(file);
        findings.addAll(reading.findings());
        reading.entry().ifPresent(entry -> {
            BoardEntry earlier = entries.get(entry.board().id());
            if (earlier != null && Drafts.isDraft(entry) && !Drafts.isDraft(earlier)) {
                findings.add(Drafts.behind(entry, earlier));
                return;
            }
            entries.put(entry.board().id(), entry);
            if (earlier != null) {
                findings.add(new Finding(Severity.WARNING, "board-replaced", Place.ofFile(file.name()),
                        Optional.empty(), entry.board().id().value(),
                        "This file replaces the board of the same id in %s.".formatted(earlier.file()), "",
                        "Delete one of the files, or give one board another id, unless this is meant."));
            }
        });
    }
}
