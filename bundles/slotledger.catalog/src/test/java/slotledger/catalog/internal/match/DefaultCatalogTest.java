package slotledger.catalog.internal.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.catalog.BoardMatch;
import slotledger.catalog.BoardMatch.By;
import slotledger.catalog.internal.file.BoardReading;
import slotledger.catalog.spi.BoardFile;

class DefaultCatalogTest {

    private static final DefaultCatalog CATALOG = catalog(
            board("kestrin-kb410", "Kestrin", "KB-410", "Desk 410"),
            board("kestrin-kb410s", "Kestrin", "KB-410S", "Desk 410 Small"),
            board("kestrin-kb420", "Kestrin", "KB-420", "Desk 420"),
            board("orvane-x5", "Orvane", "X5", "Feather"),
            board("orvane-x5plus", "Orvane", "X5+", "Feather Plus"),
            board("tallowick-x5", "Tallowick", "X5", "Tower X5"));

    private static BoardEntry board(String id, String maker, String model, String alias) {
        return BoardReading.of(new BoardFile(id + ".yaml", """
                board: %s
                maker: %s
                maker-aliases: [%s Computers]
                model: %s
                aliases: [%s]
                form: desktop
                source: from memory
                channels: {A: [DIMM1]}
                takes: {generation: DDR4, form: DIMM}
                """.formatted(id, maker, maker, model, alias))).entry().orElseThrow();
    }

    private static DefaultCatalog catalog(BoardEntry... entries) {
        return new DefaultCatalog(List.of(entries));
    }

    private static String answer(String maker, String model) {
        BoardMatch match = CATALOG.match(maker, model);
        if (match instanceof BoardMatch.Found found) {
            return found.board().id() + " by " + found.by();
        }
        return "not found: " + String.join(" ", ((BoardMatch.NotFound) match).suggestions().stream()
                .map(board -> board.id().value()).toList());
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '"', value = {
        "Kestrin, KB-410, kestrin-kb410, NAME",
        "Kestrin, KB-410S, kestrin-kb410s, NAME",
        "\"\", KB-410, kestrin-kb410, NAME",
        "Kestrin, Kestrin KB-410, kestrin-kb410, NAME",
        "Kestrin, Desk 410, kestrin-kb410, ALIAS",
        "Kestrin, Desk 410 Small, kestrin-kb410s, ALIAS",
        "KESTRIN, kb 410, kestrin-kb410, NORMALISED_NAME",
        "kestrin, kb410s, kestrin-kb410s, NORMALISED_NAME",
        "Kestrin, KB-410 S, kestrin-kb410s, NORMALISED_NAME",
        "\"Kestrin, Inc.\", KB_410, kestrin-kb410, NORMALISED_NAME",
        "Kestrin Computers GmbH, ＫＢ－４１０, kestrin-kb410, NORMALISED_NAME",
        "Kestrin Computers, kestrin computers kb-410, kestrin-kb410, NORMALISED_NAME",
        "\"\", kestrin kb-410, kestrin-kb410, NORMALISED_NAME",
        "Kestrin KB-410, \"\", kestrin-kb410, NAME",
        "To be filled by O.E.M., KB-410, kestrin-kb410, NAME",
        "Orvane, X5, orvane-x5, NAME",
        "Tallowick, X5, tallowick-x5, NAME",
        "Orvane, x5+, orvane-x5plus, NORMALISED_NAME",
        "Orvane, X5 Plus, orvane-x5plus, NORMALISED_NAME",
    })
    void aNameThatOnlyOneBoardHasIsFound(String maker, String model, String id, By by) {
        assertEquals(id + " by " + by, answer(maker, model));
    }

    @ParameterizedTest
    @CsvSource(quoteCharacter = '"', value = {
        "Kestrin, KB 4l0, kestrin-kb410 kestrin-kb410s kestrin-kb420",
        "Kestrin, KB-4100, kestrin-kb410 kestrin-kb410s kestrin-kb420",
        "Kestrin, KB-41O, kestrin-kb410 kestrin-kb410s kestrin-kb420",
        "Kestrin, KB-4105, kestrin-kb410s kestrin-kb410 kestrin-kb420",
        "Kestrim, KB-410, kestrin-kb410 kestrin-kb410s kestrin-kb420",
        "Kestrin, Toaster 9, \"\"",
        "Kestrin, \"\", \"\"",
        "\"\", \"\", \"\"",
        "\"\", System Product Name, \"\"",
        "\"\", X5, orvane-x5 tallowick-x5",
    })
    void anythingElseIsASuggestionAndNeverTaken(String maker, String model, String suggestions) {
        assertEquals(("not found: " + suggestions).strip(), answer(maker, model).strip());
    }

    @Test
    void aNameThatTwoBoardsOfAMakerShareIsNeverTaken() {
        DefaultCatalog twins = catalog(
                board("kestrin-a", "Kestrin", "A", "Desk"), board("kestrin-b", "Kestrin", "B", "Desk"));

        assertEquals(2, ((BoardMatch.NotFound) twins.match("Kestrin", "Desk")).suggestions().size());
    }

    @Test
    void sharedNamesAreFoundWhenTheCatalogIsRead() {
        assertEquals(1, SharedNames.findings(List.of(
                board("kestrin-a", "Kestrin", "A", "Desk"), board("kestrin-b", "Kestrin", "B", "desk"))).size());
        assertTrue(SharedNames.findings(List.of(
                board("kestrin-a", "Kestrin", "X5", "Desk"), board("orvane-a", "Orvane", "X5", "Desk"))).isEmpty());
    }

    @Test
    void boardsComeInTheOrderOfTheirIds() {
        assertEquals(Stream.of("kestrin-kb410", "kestrin-kb410s", "kestrin-kb420", "orvane-x5", "orvane-x5plus",
                "tallowick-x5").toList(), CATALOG.boards().stream().map(board -> board.id().value()).toList());
    }

    @ParameterizedTest
    @CsvSource({"abc, abc, 1.0", "abc, acb, 0.667", "abc, abd, 0.667", "abc, xyz, 0.0", "kitten, sitting, 0.571"})
    void similarityCountsEdits(String one, String other, double expected) {
        assertEquals(expected, Similarity.of(one, other), 0.001);
    }
}
