package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge R860 manual: different capacities are not mixed; the SR630 V3 guide allows some. */
class OneCapacityTest {

    private static final MemoryRule RULE = new OneCapacity();
    private static final Board BOARD = BoardText.board("R860", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void oneCapacityPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 32GB DDR5 DIMM"));
    }

    @Test
    void twoAreUnknownAndNamed() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM; A2: 16GB DDR5 DIMM"));
        assertEquals(
                "The modules are of different capacities (32 GB in A1; 16 GB in A2); makers' manuals forbid or limit "
                        + "that, this board's document doesn't say.",
                Judged.sentence(RULE, BOARD, "A1: 32GB DDR5 DIMM; A2: 16GB DDR5 DIMM"));
    }

    @Test
    void desktopsAreNotConcerned() {
        Board desktop = BoardText.board("desktop", "channel A 1 A1 A2\ntakes DDR5 DIMM unbuffered");
        assertEquals(Weight.PASSES, Judged.by(RULE, desktop, "A1: 32GB DDR5 DIMM; A2: 16GB DDR5 DIMM"));
    }
}
