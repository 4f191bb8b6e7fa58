package slotledger.catalog.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.catalog.BoardMatch;
import slotledger.catalog.Catalog;
import slotledger.catalog.CatalogException;
import slotledger.catalog.CatalogReading;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.Slot;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;

class DemoBoardsTest {

    private static CatalogReading read() throws CatalogException {
        return new DefaultCatalogReader(List.of()).read(List.of(DemoBoards.folder()));
    }

    @Test
    void everyDemoBoardReadsWithoutAFinding() throws CatalogException {
        CatalogReading reading = read();

        assertEquals(List.of(), reading.findings());
        assertEquals(31, reading.catalog().boards().size());
    }

    @Test
    void everyDemoBoardIsFoundByEachOfItsNames() throws CatalogException {
        Catalog catalog = read().catalog();

        for (Board board : catalog.boards()) {
            for (String name : namesOf(board)) {
                assertTrue(catalog.match(board.maker(), name) instanceof BoardMatch.Found found
                        && found.board().equals(board), board.id() + " by " + name);
            }
        }
    }

    private static List<String> namesOf(Board board) {
        return Stream.concat(Stream.of(board.model(), board.name()),
                board.aliases().stream()).toList();
    }

    @Test
    void theDemoCoversEveryKindOfFamily() throws CatalogException {
        Set<Generation> generations = read().catalog().boards().stream()
                .flatMap(board -> board.takes().stream())
                .map(way -> way.generation())
                .collect(Collectors.toSet());

        assertEquals(Set.of(Generation.FPM, Generation.EDO, Generation.SDR, Generation.RDRAM, Generation.DDR,
                Generation.DDR2, Generation.DDR3, Generation.DDR4, Generation.DDR5, Generation.LPDDR4X,
                Generation.LPDDR5X), generations);
    }

    @Test
    void everyDemoBoardNamesADocumentWithPageAndDate() throws CatalogException {
        for (Board board : read().catalog().boards()) {
            assertEquals(Ground.DOCUMENT, board.source().ground(), board.id().value());
            assertFalse(board.source().place().isBlank(), board.id().value());
            assertTrue(board.source().date().isPresent(), board.id().value());
            assertFalse(board.notes().isEmpty(), board.id().value());
        }
    }

    @Test
    void everyFillOrderOfTheDemoNamesEachSocketOnce() throws CatalogException {
        for (Board board : read().catalog().boards()) {
            Set<String> sockets = board.sockets().stream().map(Slot::label).collect(Collectors.toSet());
            if (!sockets.isEmpty()) {
                assertEquals(sockets, Set.copyOf(board.fill().order()), board.id().value());
                assertEquals(sockets.size(), board.fill().order().size(), board.id().value());
            }
        }
    }

    @Test
    void rowsOfOneProcessorUseItsOwnSlotsOnly() throws CatalogException {
        for (Board board : read().catalog().boards()) {
            for (FillRow row : board.fill().table()) {
                for (String label : row.slots()) {
                    assertTrue(board.channel(board.slot(label).channel()).processor() <= row.processors(),
                            board.id() + " " + row);
                }
            }
        }
    }

    @Test
    void everyFileIsNamedAfterItsBoard() throws Exception {
        try (var files = Files.list(DemoBoards.folder())) {
            Set<String> names = files.map(Path::getFileName).map(Path::toString).collect(Collectors.toSet());
            Set<String> ids = read().catalog().boards().stream()
                    .map(board -> board.id() + ".yaml")
                    .collect(Collectors.toSet());
            assertEquals(ids, names);
        }
    }
}
