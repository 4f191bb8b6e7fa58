package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside checks: Intel D845GBV memory page (ECC refused), System x3250 M5 guide (ECC modules only). */
class EccFitsTest {

    private static final MemoryRule RULE = new EccFits();
    private static final String SOURCE = "D845GBV";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR DIMM ecc=REFUSED
            """);

    @Test
    void aBoardThatRefusesEccBlocksIt() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM non-ECC"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM"));
    }

    @Test
    void aBoardThatRequiresEccBlocksAllElse() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR3 DIMM ecc=REQUIRED
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM ECC"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM non-ECC"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM"));
    }

    @Test
    void aBoardThatIgnoresEccRunsItWithACaution() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR3 DIMM ecc=IGNORED
                """);
        assertEquals(Weight.CAUTION, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM non-ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM"));
    }

    @Test
    void aBoardThatUsesEccRunsBoth() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR3 DIMM ecc=USED
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM non-ECC"));
    }

    @Test
    void anUndescribedBoardLeavesEccModulesUnknown() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR3 DIMM ecc=UNKNOWN
                """);
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR3 DIMM non-ECC"));
    }
}
