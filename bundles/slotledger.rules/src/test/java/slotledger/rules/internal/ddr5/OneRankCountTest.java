package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo SR630 V3 guide: one number of ranks; 1 with 2, or 4 with 8, only with every socket filled. */
class OneRankCountTest {

    private static final MemoryRule RULE = new OneRankCount();
    private static final Board BOARD = BoardText.board("SR630 V3", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void oneNumberPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 2Rx8"));
    }

    @Test
    void oneAndTwoWithEverySocketFilledAreACaution() {
        assertEquals(Weight.CAUTION,
                Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 2Rx8; A5 A6: 16GB DDR5 DIMM registered 1Rx8"));
    }

    @Test
    void fourAndEightLogicalRanksToo() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD,
                "A1 A2: 256GB DDR5 DIMM registered 2Rx4 16384Mbit; "
                        + "A5 A6: 128GB DDR5 DIMM registered 2Rx4 16384Mbit"));
    }

    @Test
    void otherMixturesAreUnknown() {
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 2Rx8; A5: 16GB DDR5 DIMM registered 1Rx8"));
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1 A2: 64GB DDR5 DIMM registered 4Rx8; A5 A6: 16GB DDR5 DIMM registered 1Rx8"));
    }
}
