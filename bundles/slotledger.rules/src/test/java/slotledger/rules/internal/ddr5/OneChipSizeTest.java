package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo SR630 V3 guide: 16, 24 and 32 Gbit are not mixed; 24 Gbit is in 24, 48 and 96 GB modules. */
class OneChipSizeTest {

    private static final MemoryRule RULE = new OneChipSize();
    private static final Board BOARD = BoardText.board("SR630 V3", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void oneSizePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 48GB DDR5 DIMM registered 1Rx4"));
        assertEquals(Weight.PASSES,
                Judged.by(RULE, BOARD, "A1: 48GB DDR5 DIMM registered; A2: 96GB DDR5 DIMM registered"));
    }

    @Test
    void modulesOf24GbitBesideOthersBlock() {
        assertEquals(Weight.BLOCKS,
                Judged.by(RULE, BOARD, "A1: 48GB DDR5 DIMM registered; A2: 64GB DDR5 DIMM registered"));
        assertEquals(
                "Chips of different size are mixed (24 Gbit in A1; a size other than 24 Gbit in A2).",
                Judged.sentence(RULE, BOARD, "A1: 48GB DDR5 DIMM registered; A2: 64GB DDR5 DIMM registered"));
    }

    @Test
    void chipsOf16And32GbitBlock() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD,
                "A1: 128GB DDR5 DIMM registered 2Rx4 32768Mbit; "
                        + "A2: 64GB DDR5 DIMM registered 2Rx4 16384Mbit"));
    }
}
