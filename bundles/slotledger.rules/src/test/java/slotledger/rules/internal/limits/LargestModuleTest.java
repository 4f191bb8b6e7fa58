package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the memory table of board PMPGF001: 2 GB is the largest module at 667 MT/s. */
class LargestModuleTest {

    private static final MemoryRule RULE = new LargestModule();
    private static final String SOURCE = "PMPGF001";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 1 3
            takes DDR2 DIMM largest=2GB
            """);

    @Test
    void upToTheLargestPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1: 2GB DDR2 DIMM"));
    }

    @Test
    void aLargerOneBlocksWithBothNumbers() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 4GB DDR2 DIMM"));
        assertEquals(
                "The 4 GB module in slot 1 is larger than the 2 GB the document allows in one slot.",
                Judged.sentence(RULE, BOARD, "1: 4GB DDR2 DIMM"));
    }
}
