package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge R860 manual and Lenovo SR630 V3 guide: no mix of x4 and x8 chips. */
class OneChipWidthTest {

    private static final MemoryRule RULE = new OneChipWidth();
    private static final Board BOARD = BoardText.board("SR630 V3", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void oneWidthPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 1Rx4"));
    }

    @Test
    void theSameCapacityOfOtherWidthBlocks() {
        assertEquals(Weight.BLOCKS,
                Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM registered 1Rx4; A2: 32GB DDR5 DIMM registered 2Rx8"));
        assertEquals(
                "Chips of different width are mixed (x4 in A1; x8 in A2).",
                Judged.sentence(RULE, BOARD, "A1: 32GB DDR5 DIMM registered 1Rx4; A2: 32GB DDR5 DIMM registered 2Rx8"));
    }

    @Test
    void anUnknownWidthBesideAnotherKindIsUnknown() {
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM registered 1Rx4; A2: 32GB DDR5 DIMM registered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered"));
    }
}
