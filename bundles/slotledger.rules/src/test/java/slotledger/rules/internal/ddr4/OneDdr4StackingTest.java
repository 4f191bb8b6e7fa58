package slotledger.rules.internal.ddr4;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Fujitsu PRIMERGY RX4770 M6 manual, Table 3, page 240: 3DS RDIMM goes with 3DS RDIMM only. */
class OneDdr4StackingTest {

    private static final MemoryRule RULE = new OneDdr4Stacking();
    private static final Board BOARD = BoardText.board("RX4770 M6 manual", """
            form server
            channel 0 1 A1 A5 A9
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            """);

    @Test
    void oneKindPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 128GB DDR4 DIMM registered 2Rx4"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 64GB DDR4 DIMM registered 2Rx4 16384Mbit"));
    }

    @Test
    void stackedBesidePlainBlocks() {
        String mixed = "A1: 64GB DDR4 DIMM registered 2Rx4 16384Mbit; A5: 128GB DDR4 DIMM registered 2Rx4";
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, mixed));
        assertEquals(
                "Modules of stacked and of plain chips are mixed (plain chips in A1; 2 or more dies stacked in A5).",
                Judged.sentence(RULE, BOARD, mixed));
    }

    @Test
    void modulesBelow64GbHavePlainChips() {
        assertEquals(Weight.PASSES,
                Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM registered; A5: 16GB DDR4 DIMM registered"));
    }

    @Test
    void anUnknownStackBesideAnotherKindIsUnknown() {
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 64GB DDR4 DIMM registered; A5: 128GB DDR4 DIMM registered 2Rx4"));
    }
}
