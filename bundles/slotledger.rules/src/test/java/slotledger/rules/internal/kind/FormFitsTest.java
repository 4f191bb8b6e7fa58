package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: BCM MX610HD manual (262-pin DDR5 SO-DIMM sockets). */
class FormFitsTest {

    private static final MemoryRule RULE = new FormFits();
    private static final String SOURCE = "MX610HD";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR5 SO-DIMM
            """);

    @Test
    void theFormTheSlotTakesPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 16GB DDR5 SO-DIMM"));
    }

    @Test
    void anotherFormBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 16GB DDR5 DIMM"));
        assertEquals(
                "The 16 GB module in slot A1 is a DIMM; the slot takes SO-DIMM.",
                Judged.sentence(RULE, BOARD, "A1: 16GB DDR5 DIMM"));
    }

    @Test
    void anUnknownFormIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 16GB DDR5"));
    }
}
