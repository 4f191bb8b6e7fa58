package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: OptiPlex GX400 service manual: the machine does not start without a module. */
class SomeMemoryTest {

    private static final MemoryRule RULE = new SomeMemory();
    private static final String SOURCE = "GX400";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR4 DIMM
            """);

    @Test
    void oneModuleIsEnough() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 4GB DDR4 DIMM"));
    }

    @Test
    void noneBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, ""));
    }

    @Test
    void anUnreadSlotMayHoldOne() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: ?"));
    }
}
