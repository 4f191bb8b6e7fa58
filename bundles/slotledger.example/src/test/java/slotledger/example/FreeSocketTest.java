package slotledger.example;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class FreeSocketTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new FreeSocket();
    private static final Board BOARD = BoardText.board("common practice", """
            channel A 1 A1 A2
            takes DDR4 DIMM
            total 32GB
            """);

    @Override
    protected MemoryRule rule() {
        return new FreeSocket();
    }

    @Test
    void aFreeSocketPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 8GB DDR4 DIMM"));
    }

    @Test
    void fullSocketsAreACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1 A2: 4GB DDR4 DIMM"));
        assertEquals("All 2 sockets are full with 8 GB; the board takes 32 GB.",
                Judged.sentence(RULE, BOARD, "A1 A2: 4GB DDR4 DIMM"));
    }

    @Test
    void theLargestTotalPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 16GB DDR4 DIMM"));
    }
}
