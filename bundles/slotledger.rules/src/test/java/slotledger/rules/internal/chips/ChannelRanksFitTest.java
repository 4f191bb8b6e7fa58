package slotledger.rules.internal.chips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge M620: two quad-rank modules a channel, never a third beside them. */
class ChannelRanksFitTest {

    private static final MemoryRule RULE = new ChannelRanksFit();
    private static final String SOURCE = "M620";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A5 A9
            takes DDR3 DIMM registered channelRanks=8
            """);

    @Test
    void twoQuadRankModulesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 16GB DDR3 DIMM registered 4Rx4"));
    }

    @Test
    void aThirdModuleBesideThemBlocks() {
        assertEquals(
                Weight.BLOCKS,
                Judged.by(RULE, BOARD, "A1 A5: 16GB DDR3 DIMM registered 4Rx4; A9: 4GB DDR3 DIMM registered 1Rx4"));
        assertEquals(
                "The modules of channel A have 9 ranks together; the channel drives 8.",
                Judged.sentence(RULE, BOARD, "A1 A5: 16GB DDR3 DIMM registered 4Rx4; A9: 4GB "
                        + "DDR3 DIMM registered 1Rx4"));
    }

    @Test
    void threeDualRankModulesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5 A9: 8GB DDR3 DIMM registered 2Rx4"));
    }

    @Test
    void unknownRanksAreUnknownWhereTheyMatter() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1 A5 A9: 8GB DDR3 DIMM registered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 8GB DDR3 DIMM registered"));
    }
}
