package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge T630 Owner's Manual: registered and load-reduced modules are not mixed. */
class OneBufferingTest {

    private static final MemoryRule RULE = new OneBuffering();
    private static final String SOURCE = "T630";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A5
            takes DDR4 DIMM registered load-reduced
            """);

    @Test
    void oneBufferingPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 16GB DDR4 DIMM registered"));
    }

    @Test
    void twoBufferingsBlock() {
        assertEquals(
                Weight.BLOCKS,
                Judged.by(RULE, BOARD, "A1: 16GB DDR4 DIMM registered; A5: 32GB DDR4 DIMM load-reduced"));
    }
}
