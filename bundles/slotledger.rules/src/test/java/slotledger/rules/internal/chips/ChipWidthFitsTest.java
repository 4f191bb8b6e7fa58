package slotledger.rules.internal.chips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: HP guides (705 G1, 280 G4): "DIMMs with x4 SDRAM are not supported". */
class ChipWidthFitsTest {

    private static final MemoryRule RULE = new ChipWidthFits();
    private static final String SOURCE = "705 G1";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR2 DIMM unbuffered widths=x8,x16
            """);

    @Test
    void x4ChipsBlockOnADesktop() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 2GB DDR2 DIMM unbuffered 1Rx4"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 2GB DDR2 DIMM unbuffered 2Rx8"));
    }

    @Test
    void theWidthIsDerivedFromTheOtherFigures() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 2GB DDR2 DIMM unbuffered 2Rx8 1024Mbit"));
    }

    @Test
    void unbufferedModulesOfUnknownWidthHaveX8OrX16Chips() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR4 DIMM unbuffered widths=x8,x16
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR4 DIMM unbuffered"));
    }

    @Test
    void aBoardForX8OnlyNeedsTheWidth() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR2 DIMM unbuffered widths=x8
                """);
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A1: 1GB DDR2 DIMM unbuffered"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1: 1GB DDR2 DIMM unbuffered 2Rx16"));
    }

    @Test
    void silenceIsDangerousForX4OnAnUnbufferedBoard() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR2 DIMM unbuffered
                """);
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A1: 2GB DDR2 DIMM unbuffered 1Rx4"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 2GB DDR2 DIMM unbuffered 2Rx8"));
    }

    @Test
    void registeredModulesOfAnyWidthFitAServerForBoth() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR4 DIMM registered widths=x4,x8
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM registered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM registered 2Rx4"));
    }
}
