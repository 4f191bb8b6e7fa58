package slotledger.rules.internal.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel 3rd generation Core datasheet 2.1.4: the slowest module sets the rate. */
class MixedRatesTest {

    private static final MemoryRule RULE = new MixedRates();
    private static final String SOURCE = "3rd generation datasheet";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR3 DIMM
            limit 1600
            """);

    @Test
    void aSlowerModuleLowers() {
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "A1: 4GB DDR3-1600 DIMM; A2: 4GB DDR3-1333 DIMM"));
    }

    @Test
    void nothingIsLostWhereTheBoardIsNoFaster() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 4GB DDR3-1866 DIMM; A2: 4GB DDR3-1600 DIMM"));
    }

    @Test
    void equalRatesSayNothing() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 4GB DDR3-1333 DIMM"));
    }
}
