package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel D410PT specification, Table 4: 256 MB is the smallest DDR2 module. */
class SmallestModuleTest {

    private static final MemoryRule RULE = new SmallestModule();
    private static final String SOURCE = "D410PT";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 1
            takes DDR2 DIMM smallest=256MB
            """);

    @Test
    void theSmallestPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1: 256MB DDR2 DIMM"));
    }

    @Test
    void aSmallerOneBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 128MB DDR2 DIMM"));
    }
}
