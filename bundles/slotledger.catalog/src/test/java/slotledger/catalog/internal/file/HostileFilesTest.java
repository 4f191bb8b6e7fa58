package slotledger.catalog.internal.file;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import slotledger.catalog.BoardFormat;
import slotledger.catalog.internal.DemoBoards;
import slotledger.catalog.spi.BoardFile;

/** Whatever is in a file, reading it gives a board or findings, and never both or neither. */
class HostileFilesTest {

    private static final List<String> TEXTS = texts();

    private static List<String> texts() {
        try (var files = Files.list(DemoBoards.folder())) {
            List<String> texts = new ArrayList<>(List.of(BoardFormat.template()));
            for (var file : files.sorted().toList()) {
                texts.add(Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void givesABoardOrFindings(String text) {
        BoardReading reading = BoardReading.of(new BoardFile("board.yaml", text));

        assertEquals(reading.entry().isEmpty(), !reading.findings().isEmpty(), reading.findings().toString());
    }

    @Property(tries = 3000)
    void aDamagedBoardFileGivesABoardOrFindings(
            @ForAll("boards") String text, @ForAll @IntRange(max = 6000) int at, @ForAll @IntRange(max = 40) int length,
            @ForAll("scraps") String scrap) {
        int from = Math.min(at, text.length());
        givesABoardOrFindings(text.substring(0, from) + scrap + text.substring(Math.min(from + length, text.length())));
    }

    @Property(tries = 1000)
    void anyTextGivesABoardOrFindings(@ForAll String text) {
        givesABoardOrFindings(text);
    }

    @Provide
    Arbitrary<String> boards() {
        return Arbitraries.of(TEXTS);
    }

    @Provide
    Arbitrary<String> scraps() {
        return Arbitraries.oneOf(
                Arbitraries.of("", "\n", "[", "]", "{}", "{a: b}", "- ", ": ", "&a ", "*a", "!!int ", "null", "0", "-1",
                        "99999999999", "1e9", "''", "\t", "---\n", "...\n", "%YAML 1.1\n", "? ", "<<: ", "\u0000",
                        "\uFEFF", "\u202E", "varies", "dead", "soldered: {}", "slots: []", "table-only: yes"),
                Arbitraries.strings().ofMaxLength(8));
    }
}
