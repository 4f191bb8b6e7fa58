package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel D845GBV memory page: "Registered DIMMs are not supported". */
class BufferingFitsTest {

    private static final MemoryRule RULE = new BufferingFits();
    private static final String SOURCE = "D845GBV";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR DIMM unbuffered
            """);

    @Test
    void registeredModulesBlockOnAnUnbufferedBoard() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM registered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM unbuffered"));
    }

    @Test
    void unknownBufferingIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM"));
    }

    @Test
    void aModuleWithoutCheckBitsIsUnbuffered() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 512MB DDR DIMM non-ECC"));
    }

    @Test
    void aSilentDocumentSaysNothing() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR DIMM
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 512MB DDR DIMM registered"));
    }

    @Test
    void unbufferedModulesBlockOnARegisteredBoard() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR4 DIMM registered load-reduced
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1: 8GB DDR4 DIMM unbuffered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 64GB DDR4 DIMM load-reduced"));
    }
}
