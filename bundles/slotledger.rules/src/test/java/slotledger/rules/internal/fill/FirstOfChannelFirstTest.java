package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo SR630 V3 guide: slot 0 of each channel first. */
class FirstOfChannelFirstTest {

    private static final MemoryRule RULE = new FirstOfChannelFirst();
    private static final String SOURCE = "SR630 V3";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR4 DIMM
            """);

    @Test
    void theFirstSlotPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 8GB DDR4 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 8GB DDR4 DIMM"));
    }

    @Test
    void theSecondAloneIsACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A2: 8GB DDR4 DIMM"));
    }

    @Test
    void aDocumentedOrderOverrides() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1 A2
                takes DDR4 DIMM
                order A2 A1
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A2: 8GB DDR4 DIMM"));
    }
}
