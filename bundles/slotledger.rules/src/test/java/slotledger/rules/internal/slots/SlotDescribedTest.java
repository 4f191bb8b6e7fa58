package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge SC1425 manual p.49: some banks stay empty in some ways of filling. */
class SlotDescribedTest {

    private static final MemoryRule RULE = new SlotDescribed();
    private static final String SOURCE = "SC1425";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2 A3
            takes DDR2 DIMM ranks=1
            takes DDR2 DIMM ranks=2 only=A1,A2
            """);

    @Test
    void slotsOfTheWayChosenPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 1GB DDR2 DIMM registered 2Rx8"));
    }

    @Test
    void aSlotNoDocumentDescribesIsUnknown() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1 A2 A3
                takes DDR2 DIMM only=A1,A2
                """);
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A3: 1GB DDR2 DIMM registered 2Rx8"));
    }
}
