package slotledger.rules.internal.rate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: ASUS manuals: "always install DIMMs with the same CAS latency". */
class MixedLatenciesTest {

    private static final MemoryRule RULE = new MixedLatencies();
    private static final String SOURCE = "ASUS manuals";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR4 DIMM
            """);

    @Test
    void oneLatencyPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 8GB DDR4-2666 DIMM CL19"));
    }

    @Test
    void twoLatenciesAreACaution() {
        assertEquals(
                Weight.CAUTION,
                Judged.by(RULE, BOARD, "A1: 8GB DDR4-2666 DIMM CL19; A2: 8GB DDR4-2666 DIMM CL17"));
    }

    @Test
    void latenciesOfOtherRatesAreNotCompared() {
        assertEquals(
                Weight.PASSES,
                Judged.by(RULE, BOARD, "A1: 8GB DDR4-2666 DIMM CL19; A2: 8GB DDR4-2400 DIMM CL17"));
    }
}
