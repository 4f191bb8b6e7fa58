package slotledger.rules.internal.chips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside checks: chip arithmetic of Intel DH61SA Table 3; ASUS Maximus IX Apex (512 Mbit chips not supported). */
class ChipSizeFitsTest {

    private static final MemoryRule RULE = new ChipSizeFits();
    private static final String SOURCE = "DH61SA";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR3 DIMM unbuffered chip=1024..4096
            """);

    @Test
    void chipsWithinTheLimitsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 8GB DDR3 DIMM unbuffered 2Rx8"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 8GB DDR3 DIMM unbuffered 2Rx8 4096Mbit"));
    }

    @Test
    void largerChipsBlock() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 8GB DDR3 DIMM unbuffered 1Rx8"));
        assertEquals(
                "The 8 GB module in slot A1 has chips of 8 Gbit; the board knows chips from 1 Gbit up to 4 Gbit.",
                Judged.sentence(RULE, BOARD, "A1: 8GB DDR3 DIMM unbuffered 1Rx8"));
    }

    @Test
    void noChipIsLargerThanItsGenerationIsMade() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR3 DIMM unbuffered chip=..8192
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR3 DIMM unbuffered"));
    }

    @Test
    void smallerChipsBlock() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 1GB DDR3 DIMM unbuffered 2Rx8"));
    }

    @Test
    void anUnknownSizeIsUnknownOnlyWhereItMatters() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 8GB DDR3 DIMM unbuffered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 2GB DDR3 DIMM unbuffered"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 16GB DDR3 DIMM unbuffered"));
    }
}
