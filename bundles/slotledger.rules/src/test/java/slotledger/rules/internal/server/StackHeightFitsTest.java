package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; the board's own document. That dies of DDR4 end at 16 Gbit is from memory. */
class StackHeightFitsTest {

    private static final MemoryRule RULE = new StackHeightFits();
    private static final Board BOARD = BoardText.board("board manual", """
            form server
            channel 0 1 A1 A5
            takes DDR4 DIMM registered stack=1
            """);

    @Test
    void plainChipsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 64GB DDR4 DIMM registered 2Rx4 16384Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM registered"));
    }

    @Test
    void aStackIsACautionWhereNoDocumentSpeaksOfStacks() {
        Board silent = BoardText.board("none", "channel A 1 A1\ntakes DDR4 DIMM registered");
        assertEquals("The 64 GB module in slot A1 has 2 dies or more stacked in a chip; no document says that the "
                        + "board works with them.",
                Judged.sentence(RULE, silent, "A1: 64GB DDR4 DIMM registered 2Rx4 stack=2"));
        assertEquals(0, Judged.verdict(RULE, Judged.setup(silent, "A1: 32GB DDR4 DIMM registered 2Rx4 stack=1"))
                .reasons().size());
    }

    @Test
    void aStackBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 128GB DDR4 DIMM registered 2Rx4"));
        assertEquals(
                "The 128 GB module in slot A1 has at least 2 dies stacked in a chip; the board works with plain chips "
                        + "only.",
                Judged.sentence(RULE, BOARD, "A1: 128GB DDR4 DIMM registered 2Rx4"));
    }

    @Test
    void anUnknownStackIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 64GB DDR4 DIMM registered"));
        assertEquals(
                "It is not known whether the chips of the 64 GB module in slot A1 are stacked; the board works with "
                        + "plain chips only.",
                Judged.sentence(RULE, BOARD, "A1: 64GB DDR4 DIMM registered"));
    }
}
