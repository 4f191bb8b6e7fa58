package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge DDR4 manuals: at most two capacities. */
class TwoCapacitiesTest {

    private static final MemoryRule RULE = new TwoCapacities();
    private static final String SOURCE = "T630";
    private static final Board BOARD = BoardText.board(SOURCE, """
            form server
            channel 0 1 A1 A5 A9
            takes DDR4 DIMM registered
            """);

    @Test
    void twoCapacitiesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM; A5: 16GB DDR4 DIMM"));
    }

    @Test
    void aThirdIsUnknown() {
        assertEquals(
                Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM; A5: 16GB DDR4 DIMM; A9: 8GB DDR4 DIMM"));
    }
}
