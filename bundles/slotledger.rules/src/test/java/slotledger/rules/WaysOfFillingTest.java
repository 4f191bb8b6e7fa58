package slotledger.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.Situations;
import slotledger.rules.standard.StandardRules;

/** Outside check: the memory table of board PMPGF001, where the largest module hangs on the grade. */
class WaysOfFillingTest {

    private static final Board PMPGF001 = BoardText.board("PMPGF001", """
            channel A 1 1 3
            channel B 1 2 4
            takes DDR2 DIMM unbuffered rates=800 largest=1GB
            takes DDR2 DIMM unbuffered rates=533,667 largest=2GB
            """);

    private static final String REST = " DIMM unbuffered non-ECC 2Rx8";

    @Test
    void allModulesFollowOneOfTheWays() {
        assertEquals(Weight.PASSES, Judged.byAll(PMPGF001, "1 2: 1GB DDR2-800" + REST).weight());
        assertEquals(Weight.PASSES, Judged.byAll(PMPGF001, "1 2: 2GB DDR2-667" + REST).weight());
        assertEquals(Weight.BLOCKS, Judged.byAll(PMPGF001, "1 2: 2GB DDR2-800" + REST).weight());
        assertEquals(Weight.BLOCKS,
                Judged.byAll(PMPGF001, "1: 1GB DDR2-800" + REST + "; 2: 2GB DDR2-667" + REST).weight());
    }

    @Test
    void aNoNamesTheObjectionsOfTheOtherWaysToo() {
        Verdict verdict = Judged.byAll(PMPGF001, "1 2: 2GB DDR2-800" + REST);
        Reason worst = verdict.reasons().get(0);
        assertTrue(worst.sentence().contains("allows 2 ways of filling"), worst.sentence());
        assertFalse(worst.because().isEmpty());
        List<String> rules = worst.because().stream().map(Reason::rule).distinct().toList();
        assertTrue(rules.contains("grade") || rules.contains("largest-module"), rules.toString());
    }

    @Test
    void descriptionsOfDifferentSlotsHoldTogether() {
        Board board = BoardText.board("none", """
                channel A 1 A1 A2
                channel B 1 B1 B2
                takes DDR4 DIMM largest=16GB only=A1,B1
                takes DDR4 DIMM largest=8GB only=A2,B2
                """);
        assertEquals(1, new Situations().of(Judged.setup(board, "")).size());
        String rest = "GB DDR4-2400 DIMM unbuffered non-ECC";
        assertFalse(Judged.byAll(board, "A1 B1: 16" + rest + "; A2 B2: 8" + rest).blocks());
        assertTrue(Judged.byAll(board, "A1 A2 B1 B2: 16" + rest).blocks());
    }

    @Test
    void aWayForSomeSlotsLeavesTheOthersEmpty() {
        Board board = BoardText.board("none", """
                channel A 1 A1 A2 A3
                takes DDR3 DIMM ranks=1
                takes DDR3 DIMM ranks=2 only=A1,A2
                """);
        assertEquals(2, new Situations().of(Judged.setup(board, "")).size());
        assertFalse(Judged.byAll(board, "A1 A2 A3: 4GB DDR3-1333 DIMM unbuffered non-ECC 1Rx8").blocks());
        assertFalse(Judged.byAll(board, "A1 A2: 4GB DDR3-1333 DIMM unbuffered non-ECC 2Rx8").blocks());
        assertTrue(Judged.byAll(board, "A1 A2 A3: 4GB DDR3-1333 DIMM unbuffered non-ECC 2Rx8").blocks());
    }

    @Test
    void aFamilyWithoutRulesGetsOneUnknownReason() {
        Board board = BoardText.board("none", "channel A 1 A1 A2\ntakes EDO DIMM");
        Verdict verdict = Judged.byAll(board, "A1: 16MB EDO");
        assertEquals(1, verdict.reasons().size());
        assertEquals("There are no rules for this family (EDO).", verdict.reasons().get(0).sentence());
        assertEquals(Weight.UNKNOWN, verdict.weight());
    }

    @Test
    void aPopulationOfAnotherBoardFailsFast() {
        Board board = BoardText.board("none", "channel A 1 A1\ntakes DDR4 DIMM");
        Setup setup = Setup.of(board, ModuleText.population(board, "A1: 8GB DDR4")
                .with("X9", ModuleText.module("8GB")));
        assertThrows(IllegalArgumentException.class, () -> StandardRules.create().weigh(setup));
    }

    @Test
    void reasonsComeWorstFirstWithTheirSource() {
        Board board = BoardText.board("Board manual KB-1", "channel A 1 A1\ntakes DDR4 DIMM unbuffered largest=8GB");
        Verdict verdict = Judged.byAll(board, "A1: 16GB DDR4-2400 DIMM");
        List<Weight> weights = verdict.reasons().stream().map(Reason::weight).toList();
        assertEquals(weights.stream().sorted((one, other) -> other.compareTo(one)).toList(), weights);
        assertEquals("largest-module", verdict.reasons().get(0).rule());
        assertEquals("Board manual KB-1", verdict.reasons().get(0).source().document());
        assertFalse(verdict.reasons().get(0).remedy().isBlank());
    }

    private static final String TWO_FAMILIES = """
            channel A 1 OLD1 NEW1
            channel B 1 OLD2 NEW2
            takes DDR2 DIMM unbuffered only=OLD1,OLD2
            takes DDR3 DIMM unbuffered only=NEW1,NEW2
            fill required
            """;

    /** Sockets of the generation that isn't used come first in no order, bank or row. */
    @Test
    void theSocketsOfTheOtherGenerationHoldNothingUp() {
        for (String first : List.of("order OLD1 OLD2 NEW1 NEW2", "bank 0 OLD1 OLD2\nbank 1 NEW1 NEW2",
                "row 1 OLD1 OLD2\norder NEW1 NEW2")) {
            Board board = BoardText.board("two families", TWO_FAMILIES + first);
            Verdict verdict = Judged.byAll(board, "NEW1 NEW2: 2GB DDR3-1066 DIMM unbuffered non-ECC 2Rx8");
            assertEquals(List.of(), verdict.reasons(Weight.BLOCKS), first);
        }
        Board banks = BoardText.board("two families", TWO_FAMILIES + "bank 0 NEW1 NEW2\nbank 1 OLD1 OLD2");
        assertEquals(Weight.BLOCKS, Judged.byAll(banks, "OLD1: 2GB DDR2-800 DIMM unbuffered").weight());
    }

    /** Where one family may use the sockets of another, those of a way that doesn't speak of them stay empty in it. */
    @Test
    void whatStaysEmptyInAWayComesFirstInNoOrder() {
        Board board = BoardText.board("registered in two sockets", """
                channel A 1 A1 A2
                channel B 1 B1 B2
                takes DDR3 DIMM unbuffered
                takes DDR3 DIMM registered only=A2,B2
                order A1 B1 A2 B2
                fill required
                """);
        assertEquals(List.of(), Judged.byAll(board, "A2 B2: 2GB DDR3-1066 DIMM registered ECC 2Rx8")
                .reasons(Weight.BLOCKS));
        assertEquals(Weight.BLOCKS, Judged.byAll(board, "A2 B2: 2GB DDR3-1066 DIMM unbuffered non-ECC 2Rx8").weight());
    }
}
