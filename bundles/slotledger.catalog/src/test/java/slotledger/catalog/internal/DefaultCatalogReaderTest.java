package slotledger.catalog.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.catalog.CatalogException;
import slotledger.catalog.CatalogReading;
import slotledger.catalog.spi.BoardFile;
import slotledger.catalog.spi.BoardSource;
import slotledger.model.finding.Finding;

class DefaultCatalogReaderTest {

    @TempDir
    Path folder;

    private static String board(String id, String model) {
        return """
                board: %s
                maker: Kestrin
                model: %s
                form: desktop
                source: from memory
                channels: {A: [DIMM1]}
                takes: {generation: DDR4, form: DIMM}
                """.formatted(id, model);
    }

    private void write(String name, String text) throws IOException {
        Files.createDirectories(folder.resolve(name).getParent());
        Files.writeString(folder.resolve(name), text);
    }

    private CatalogReading read(BoardSource... sources) throws CatalogException {
        return new DefaultCatalogReader(List.of(sources)).read(List.of(folder));
    }

    private static List<String> codes(CatalogReading reading) {
        return reading.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aBadFileStopsNoOther() throws Exception {
        write("a.yaml", board("a", "A"));
        write("b.yaml", "board: [");
        write("c.yml", board("c", "C"));
        Files.write(folder.resolve("d.yaml"), "model: Düsseldorf".getBytes(StandardCharsets.ISO_8859_1));
        Files.write(folder.resolve("e.yaml"), new byte[1_000_000]);
        Files.write(folder.resolve("f.yaml"), new byte[100]);

        CatalogReading reading = read();

        assertEquals(List.of("a", "c"), reading.catalog().boards().stream().map(board -> board.id().value()).toList());
        assertEquals(List.of("board-file-encoding", "board-file-too-large", "board-file-syntax", "board-file-syntax"),
                codes(reading));
    }

    @Test
    void filesInFoldersAreReadAndOthersLeftAlone() throws Exception {
        write("kestrin/a.yaml", board("a", "A"));
        write("readme.txt", "not a board");
        write(".hidden.yaml", "not a board");

        assertEquals(1, read().catalog().boards().size());
        assertEquals(List.of(), read().findings());
    }

    @Test
    void aLaterFileReplacesABoardOfTheSameIdAndSaysSo() throws Exception {
        write("a.yaml", board("x", "Old"));
        write("b.yaml", board("x", "New"));

        CatalogReading reading = read();

        assertEquals("New", reading.catalog().boards().get(0).model());
        assertEquals(List.of("board-replaced"), codes(reading));
        assertTrue(reading.findings().get(0).message().contains("a.yaml"));
    }

    @Test
    void boardsOfASourceComeBeforeThoseOfTheProject() throws Exception {
        write("a.yaml", board("x", "Ours"));

        CatalogReading reading = read(
                () -> List.of(new BoardFile("drop-in/x.yaml", board("x", "Theirs")),
                        new BoardFile("drop-in/y.yaml", board("y", "Other"))));

        assertEquals(List.of("Ours", "Other"),
                reading.catalog().boards().stream().map(board -> board.model()).toList());
    }

    @Test
    void aFailingSourceIsAFindingAndNothingMore() throws Exception {
        write("a.yaml", board("x", "Ours"));

        CatalogReading reading = read(() -> {
            throw new IOException("the jar is damaged");
        });

        assertEquals(1, reading.catalog().boards().size());
        assertEquals(List.of("board-source-unreadable"), codes(reading));
    }

    @Test
    void aMissingFolderIsReportedByName() {
        Path missing = folder.resolve("nothing");
        CatalogException problem = assertThrows(CatalogException.class,
                () -> new DefaultCatalogReader(List.of()).read(List.of(missing)));

        assertTrue(problem.getMessage().contains("nothing"), problem.getMessage());
    }
}
