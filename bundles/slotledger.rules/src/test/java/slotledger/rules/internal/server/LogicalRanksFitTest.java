package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge R860 manual, Table 89: the 256 GB module of 2 x 4 dies is printed as 8 R. */
class LogicalRanksFitTest {

    private static final MemoryRule RULE = new LogicalRanksFit();
    private static final Board BOARD = BoardText.board("R860", """
            form server
            channel 0 1 A1 A5
            takes DDR5 DIMM registered channelRanks=8
            """);

    @Test
    void diesCountAsRanks() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 256GB DDR5 DIMM registered 2Rx4 16384Mbit"));
        assertEquals(
                "The modules of channel 0 have 8 logical ranks (2 x 4 = 8 in A1); the channel drives 8.",
                Judged.sentence(RULE, BOARD, "A1: 256GB DDR5 DIMM registered 2Rx4 16384Mbit"));
    }

    @Test
    void twoOfEightAreTooMany() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1 A5: 256GB DDR5 DIMM registered 2Rx4 16384Mbit"));
    }

    @Test
    void plainModulesAreLeftToTheOtherRule() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 64GB DDR5 DIMM registered 2Rx4"));
    }

    @Test
    void anUnknownStackIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1 A5: 256GB DDR5 DIMM registered 4Rx4"));
    }
}
