package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo SR630 V3 guide: no mix of x4 and x8 chips. */
class OneChipWidthTest {

    private static final MemoryRule RULE = new OneChipWidth();
    private static final String SOURCE = "SR630 V3";
    private static final Board BOARD = BoardText.board(SOURCE, """
            form server
            channel 0 1 A1 A2
            takes DDR5 DIMM registered
            """);

    @Test
    void oneWidthPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM registered 1Rx4"));
    }

    @Test
    void aMixIsUnknown() {
        assertEquals(
                Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM registered 1Rx4; A2: 32GB DDR5 DIMM registered 2Rx8"));
    }
}
