package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: System x3650 M4 BD guide, Table 8: connectors 8 and 16 in turn. */
class ProcessorsEqualTest {

    private static final MemoryRule RULE = new ProcessorsEqual();
    private static final String SOURCE = "x3650 M4 BD";
    private static final Board BOARD = BoardText.board(SOURCE, """
            form server
            channel 1 1 8 7
            channel 2 2 16 15
            takes DDR3 DIMM
            """);

    @Test
    void equalProcessorsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "8 16: 8GB DDR3 DIMM"));
    }

    @Test
    void unequalOnesLower() {
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "8 7 16: 8GB DDR3 DIMM"));
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "8: 8GB DDR3 DIMM"));
    }
}
