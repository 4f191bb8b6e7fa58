package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Fujitsu RX2540 M1: descending capacity. */
class LargestFirstTest {

    private static final MemoryRule RULE = new LargestFirst();
    private static final String SOURCE = "RX2540 M1";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR4 DIMM registered
            order A1 B1 A2 B2
            fill required largestFirst
            """);

    @Test
    void descendingCapacitiesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 B1: 16GB DDR4 DIMM; A2 B2: 8GB DDR4 DIMM"));
    }

    @Test
    void aLargerOneAfterASmallerBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1 B1: 8GB DDR4 DIMM; A2 B2: 16GB DDR4 DIMM"));
        assertEquals(
                "16 GB in slot A2 come after 8 GB in slot B1; the larger module goes first.",
                Judged.sentence(RULE, BOARD, "A1 B1: 8GB DDR4 DIMM; A2 B2: 16GB DDR4 DIMM"));
    }
}
