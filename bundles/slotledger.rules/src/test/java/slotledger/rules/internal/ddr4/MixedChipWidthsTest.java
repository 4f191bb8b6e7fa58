package slotledger.rules.internal.ddr4;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: XC Core XC750xa manual, page 57 (x4 and x8 mix); PowerEdge R7425 manual, page 104 (no mix). */
class MixedChipWidthsTest {

    private static final MemoryRule RULE = new MixedChipWidths();
    private static final Board BOARD = BoardText.board("XC750xa manual", """
            form server
            channel 0 1 A1 A5 A9
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            """);

    @Test
    void oneWidthPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A5: 32GB DDR4 DIMM registered 2Rx4"));
    }

    @Test
    void aMixIsACautionThatNamesTheSlots() {
        String mixed = "A1 A9: 32GB DDR4 DIMM registered 2Rx4; A5: 16GB DDR4 DIMM registered 2Rx8";
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, mixed));
        assertEquals(
                "Chips of different width are mixed (x4 in A1, A9; x8 in A5): most DDR4 servers run them, some forbid "
                        + "it.",
                Judged.sentence(RULE, BOARD, mixed));
    }

    @Test
    void desktopsAreNotConcerned() {
        Board desktop = BoardText.board("desktop", "channel A 1 A1 A2\ntakes DDR4 DIMM unbuffered");
        assertEquals(Weight.PASSES,
                Judged.by(RULE, desktop, "A1: 8GB DDR4 DIMM unbuffered 1Rx8; A2: 4GB DDR4 DIMM unbuffered 1Rx16"));
    }
}
