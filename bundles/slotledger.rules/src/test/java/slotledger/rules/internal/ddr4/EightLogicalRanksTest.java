package slotledger.rules.internal.ddr4;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge T630 Owner's Manual: three RDIMMs of 2 ranks or LRDIMMs of 4; x3630 M4 guide: 8 ranks. */
class EightLogicalRanksTest {

    private static final MemoryRule RULE = new EightLogicalRanks();
    private static final Board BOARD = BoardText.board("T630", """
            form server
            channel 0 1 A1 A5 A9
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            """);

    @Test
    void threeDualRankModulesAreWithinEight() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5 A9: 16GB DDR4 DIMM registered 2Rx4"));
    }

    @Test
    void loadReducedModulesAreExempt() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5 A9: 32GB DDR4 DIMM load-reduced 4Rx4"));
    }

    @Test
    void twelveRanksNeedADocument() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1 A5 A9: 32GB DDR4 DIMM registered 4Rx4"));
        assertEquals(
                "Channel 0 holds 12 ranks of registered modules (4 in A1, A5, A9); 8 is the classic limit, and no "
                        + "document says what this channel drives.",
                Judged.sentence(RULE, BOARD, "A1 A5 A9: 32GB DDR4 DIMM registered 4Rx4"));
    }

    @Test
    void stackedDiesCount() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 256GB DDR4 DIMM registered 2Rx4 16384Mbit"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1 A5: 256GB DDR4 DIMM registered 2Rx4 16384Mbit"));
    }

    @Test
    void aStatedLimitIsLeftToTheRuleOfTheBoard() {
        Board stated = BoardText.board("stated", "channel 0 1 A1 A5 A9\ntakes DDR4 DIMM channelRanks=12");
        assertEquals(Weight.PASSES, Judged.by(RULE, stated, "A1 A5 A9: 32GB DDR4 DIMM registered 4Rx4"));
    }
}
