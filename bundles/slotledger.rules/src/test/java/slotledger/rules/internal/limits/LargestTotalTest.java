package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the memory table of board PMPGF001: 4 GB in all at 800 MT/s, though 4 x 2 GB would fit. */
class LargestTotalTest {

    private static final MemoryRule RULE = new LargestTotal();
    private static final String SOURCE = "PMPGF001";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 1 3
            channel B 1 2 4
            takes DDR2 DIMM
            total 4GB
            """);

    @Test
    void upToTheTotalPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 2 3 4: 1GB DDR2 DIMM"));
    }

    @Test
    void moreBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1 2 3 4: 2GB DDR2 DIMM"));
        assertEquals(
                "8 GB in all are more than the 4 GB the document allows.",
                Judged.sentence(RULE, BOARD, "1 2 3 4: 2GB DDR2 DIMM"));
    }
}
