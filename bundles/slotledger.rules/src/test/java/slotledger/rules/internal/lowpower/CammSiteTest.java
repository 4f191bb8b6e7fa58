package slotledger.rules.internal.lowpower;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: JEDEC press release on JESD318: one dual-channel module, or two stacked single-channel ones. */
class CammSiteTest {

    private static final MemoryRule RULE = new CammSite();
    private static final Board BOARD = BoardText.board("JESD318", """
            form notebook
            channel A 1 LOWER
            channel B 1 UPPER
            takes DDR5 CAMM2
            """);

    @Test
    void oneDualChannelModuleFillsItsSite() {
        Board dual = BoardText.board("JESD318", "channel AB 1 spans=2 M1\ntakes LPDDR5X LPCAMM2");
        assertEquals(Weight.PASSES, Judged.by(RULE, dual, "M1: 32GB LPDDR5X LPCAMM2"));
    }

    @Test
    void aWholeStackPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "LOWER UPPER: 16GB DDR5 CAMM2"));
    }

    @Test
    void halfAStackIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "LOWER: 16GB DDR5 CAMM2"));
        assertEquals(
                "1 of 2 single-channel modules of the stack are in; no document says whether the machine starts so.",
                Judged.sentence(RULE, BOARD, "LOWER: 16GB DDR5 CAMM2"));
    }

    @Test
    void aPrintedRowAnswersIt() {
        Board printed = BoardText.board("JESD318", """
                channel A 1 LOWER
                channel B 1 UPPER
                takes DDR5 CAMM2
                row 1 LOWER
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, printed, "LOWER: 16GB DDR5 CAMM2"));
    }

    @Test
    void soDimmsBesideItBlock() {
        Board both = BoardText.board("board manual", """
                channel AB 1 spans=2 M1
                channel A 1 S1
                takes DDR5 CAMM2 only=M1
                takes DDR5 SO-DIMM only=S1
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, both, "M1: 32GB DDR5 CAMM2; S1: 16GB DDR5 SO-DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, both, "S1: 16GB DDR5 SO-DIMM"));
    }

    @Test
    void singleChannelModulesBesideADualChannelOneBlock() {
        Board both = BoardText.board("board manual", """
                channel AB 1 spans=2 M1
                channel A 1 LOWER
                takes DDR5 CAMM2
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, both, "M1 LOWER: 16GB DDR5 CAMM2"));
    }
}
