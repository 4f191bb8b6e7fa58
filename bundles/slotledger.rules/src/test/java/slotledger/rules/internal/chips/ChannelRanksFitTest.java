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

    @Test
    void theLimitHoldsWhicheverSocketOfTheChannelItIsSaidOf() {
        Board board = BoardText.board("two lines", """
                channel A 1 A1 A5
                takes DDR3 DIMM registered only=A1
                takes DDR3 DIMM registered channelRanks=2 only=A5
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1 A5: 8GB DDR3 DIMM registered 2Rx4"));
    }

    @Test
    void theBufferOfALoadReducedModuleHidesRanks() {
        Board both = BoardText.board("M620", "channel A 1 A1 A5 A9\n"
                + "takes DDR3 DIMM registered load-reduced channelRanks=8");
        Board alone = BoardText.board("x3650", "channel A 1 A1 A5 A9\ntakes DDR3 DIMM load-reduced channelRanks=8");
        String three = "A1 A5 A9: 32GB DDR3 DIMM load-reduced 4Rx4";
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, both, three));
        assertEquals("The modules of channel A have 12 ranks together; the channel drives 8, and no document says "
                + "how many a load-reduced module shows it.", Judged.sentence(RULE, both, three));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, alone, three));
    }
}
