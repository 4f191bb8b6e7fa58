package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge R740xd2 manual, Table 10: B slots belong to processor 2. */
class AbsentProcessorTest {

    private static final MemoryRule RULE = new AbsentProcessor();
    private static final String SOURCE = "R740xd2";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel 0 1 A1
            channel 1 2 B1
            takes DDR4 DIMM registered
            """);

    @Test
    void bothProcessorsServeTheirSlots() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 B1: 16GB DDR4 DIMM registered"));
    }
}
