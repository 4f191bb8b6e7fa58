package slotledger.rules.internal.chips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge T630 Owner's Manual (registered modules of one or two ranks). */
class ModuleRanksFitTest {

    private static final MemoryRule RULE = new ModuleRanksFit();
    private static final String SOURCE = "T630";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR4 DIMM registered ranks=2
            """);

    @Test
    void upToTheLimitPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 16GB DDR4 DIMM registered 2Rx4"));
    }

    @Test
    void moreRanksBlock() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM registered 4Rx4"));
    }

    @Test
    void unknownRanksOfARegisteredModuleAreUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM registered"));
    }

    @Test
    void anUnbufferedModuleHasTwoAtMost() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR4 DIMM unbuffered ranks=2
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR4 DIMM unbuffered"));
    }
}
