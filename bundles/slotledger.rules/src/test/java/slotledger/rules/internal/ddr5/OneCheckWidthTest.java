package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo SR630 V3 guide: 9x4 RDIMM is not mixed with others. */
class OneCheckWidthTest {

    private static final MemoryRule RULE = new OneCheckWidth();
    private static final Board BOARD = BoardText.board("SR630 V3", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void oneNumberPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 1Rx4 check=4"));
        assertEquals(
                "All modules with check bits have 8 for each half channel: 40 bits instead of 32.",
                Judged.sentence(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 1Rx4 check=8"));
    }

    @Test
    void nineAndTenChipsBlock() {
        String mixed = "A1: 32GB DDR5 DIMM registered 1Rx4 check=4; A2: 32GB DDR5 DIMM registered 1Rx4 check=8";
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, mixed));
        assertEquals(
                "Modules with different check bits are mixed (EC4, 9x4 in A1; EC8, 10x4 in A2).",
                Judged.sentence(RULE, BOARD, mixed));
    }

    @Test
    void anUnknownBesideNineIsUnknown() {
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM registered 1Rx4 check=4; A2: 32GB DDR5 DIMM registered"));
        assertEquals(Weight.PASSES,
                Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM registered 1Rx4 check=8; A2: 32GB DDR5 DIMM registered"));
    }
}
