package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Precision Rack 7910 Owner's Manual, page 21: highest rank count in the white sockets first. */
class RanksFirstTest {

    private static final MemoryRule RULE = new RanksFirst();
    private static final Board BOARD = BoardText.board("Precision Rack 7910 manual", """
            form server
            channel 0 1 A1 A5
            takes DDR4 DIMM registered
            order A1 A5
            fill required ranksFirst
            """);

    @Test
    void moreRanksFirstPasses() {
        assertEquals(Weight.PASSES,
                Judged.by(RULE, BOARD, "A1: 16GB DDR4 DIMM registered 2Rx4; A5: 8GB DDR4 DIMM registered 1Rx4"));
    }

    @Test
    void fewerRanksFirstBlocks() {
        assertEquals(Weight.BLOCKS,
                Judged.by(RULE, BOARD, "A1: 8GB DDR4 DIMM registered 1Rx4; A5: 16GB DDR4 DIMM registered 2Rx4"));
        assertEquals(
                "The module in slot A5 has 2 ranks, that before it in slot A1 1; more ranks go first.",
                Judged.sentence(RULE, BOARD, "A1: 8GB DDR4 DIMM registered 1Rx4; A5: 16GB DDR4 DIMM registered 2Rx4"));
    }

    @Test
    void unknownRanksOfUnlikeModulesAreUnknown() {
        assertEquals(Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 8GB DDR4 DIMM registered; A5: 16GB DDR4 DIMM registered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 16GB DDR4 DIMM registered"));
    }
}
