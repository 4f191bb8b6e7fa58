package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel support article 000088926 (mixed part numbers in one channel). */
class AlikeInChannelTest {

    private static final MemoryRule RULE = new AlikeInChannel();
    private static final String SOURCE = "000088926";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR5 DIMM
            """);

    @Test
    void alikeModulesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 16GB DDR5-4800 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 16GB DDR5-4800 DIMM; B1: 8GB DDR5-4800 DIMM"));
    }

    @Test
    void unlikeOnesAreACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1: 16GB DDR5-4800 DIMM; A2: 8GB DDR5-4800 DIMM"));
    }
}
