package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: a ThinkPad T480s-like notebook (4 or 8 GB soldered, one socket), from public inventories. */
class SolderedStaysTest {

    private static final MemoryRule RULE = new SolderedStays();
    private static final String SOURCE = "public inventories";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 *ONBOARD=4GB_DDR4-2400
            channel B 1 S1
            takes DDR4 SO-DIMM
            """);

    @Test
    void theSolderedMemoryInPlacePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "S1: 8GB DDR4 SO-DIMM"));
    }

    @Test
    void leavingItOutBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "ONBOARD: -; S1: 8GB DDR4 SO-DIMM"));
    }

    @Test
    void anotherAmountBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "ONBOARD: 8GB DDR4; S1: 8GB DDR4 SO-DIMM"));
    }

    @Test
    void unknownSolderedMemoryIsUnknown() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 *ONBOARD
                channel B 1 S1
                takes DDR4 SO-DIMM
                """);
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "S1: 8GB DDR4 SO-DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "ONBOARD: 4GB DDR4; S1: 8GB DDR4 SO-DIMM"));
    }
}
