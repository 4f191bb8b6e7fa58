package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge R860 manual: 3DS and non-3DS RDIMMs are not mixed; Lenovo SR630 V3 guide: the same. */
class OneDdr5StackingTest {

    private static final MemoryRule RULE = new OneDdr5Stacking();
    private static final Board BOARD = BoardText.board("R860", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void oneKindPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 256GB DDR5 DIMM registered 2Rx4"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 64GB DDR5 DIMM registered 2Rx4"));
    }

    @Test
    void stackedBesidePlainBlocks() {
        assertEquals(Weight.BLOCKS,
                Judged.by(RULE, BOARD, "A1: 256GB DDR5 DIMM registered 2Rx4; A2: 64GB DDR5 DIMM registered 2Rx4"));
    }

    @Test
    void aPlain128GbModuleIsToldByItsChips() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD,
                "A1: 128GB DDR5 DIMM registered 2Rx4 32768Mbit; "
                        + "A2: 64GB DDR5 DIMM registered 2Rx4"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD,
                "A1: 128GB DDR5 DIMM registered 2Rx4 16384Mbit; "
                        + "A2: 64GB DDR5 DIMM registered 2Rx4"));
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 128GB DDR5 DIMM registered 2Rx4; A2: 64GB DDR5 DIMM registered 2Rx4"));
    }
}
