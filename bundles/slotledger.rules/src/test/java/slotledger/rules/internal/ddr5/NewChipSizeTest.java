package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; from memory. The chip size of 24, 48 and 96 GB modules: Lenovo SR630 V3 guide. */
class NewChipSizeTest {

    private static final MemoryRule RULE = new NewChipSize();
    private static final Board BOARD = BoardText.board("from memory", """
            channel A 1 A1
            channel B 1 B1
            takes DDR5 DIMM unbuffered
            """);

    @Test
    void fortyEightGbAreACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1 B1: 48GB DDR5 DIMM unbuffered"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1: 24GB DDR5 DIMM unbuffered"));
    }

    @Test
    void powersOfTwoPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 B1: 32GB DDR5 DIMM unbuffered"));
    }

    @Test
    void aStatedChipSizeIsEnough() {
        Board stated = BoardText.board("stated", "channel A 1 A1\ntakes DDR5 DIMM unbuffered chip=..24576");
        assertEquals(Weight.PASSES, Judged.by(RULE, stated, "A1: 48GB DDR5 DIMM unbuffered"));
    }
}
