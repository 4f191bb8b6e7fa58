package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the rate of unknown entries in public inventories (linuxhw), 1 to 5 percent. */
class UnreadSlotTest {

    private static final MemoryRule RULE = new UnreadSlot();
    private static final String SOURCE = "linuxhw";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR4 DIMM
            """);

    @Test
    void everySlotReadSaysNothing() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 8GB DDR4 DIMM"));
    }

    @Test
    void anUnreadSlotIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 8GB DDR4 DIMM; A2: ?"));
        assertEquals("What is in slot A2 could not be read: \"see note\".", Judged.sentence(RULE, BOARD, "A2: ?"));
    }
}
