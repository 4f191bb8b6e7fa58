package slotledger.rules.internal.ddr5;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; from memory. Intel and AMD desktops take unbuffered DDR5, servers registered. */
class KeyedSocketTest {

    private static final MemoryRule RULE = new KeyedSocket();
    private static final Board BOARD = BoardText.board("from memory", """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    @Test
    void theRightNotchPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM registered"));
    }

    @Test
    void theOtherNotchBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 32GB DDR5 DIMM unbuffered"));
        assertEquals(
                "The 32 GB module in slot A1 does not go in: the socket is keyed for registered DDR5 modules, the "
                        + "notch of the unbuffered one lies elsewhere.",
                Judged.sentence(RULE, BOARD, "A1: 32GB DDR5 DIMM unbuffered"));
    }

    @Test
    void aDocumentThatAllowsBothIsDoubted() {
        Board both = BoardText.board("both", "channel 0 1 A1\ntakes DDR5 DIMM registered unbuffered");
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, both, "A1: 32GB DDR5 DIMM registered"));
    }
}
