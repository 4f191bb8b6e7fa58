package slotledger.rules.internal.lowpower;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: JEDEC press release on JESD318, 2023-12-05: mounting differs on purpose. */
class CammMountingTest {

    private static final MemoryRule RULE = new CammMounting();
    private static final Board BOARD = BoardText.board("JESD318", """
            form notebook
            channel AB 1 spans=2 M1
            takes LPDDR5X LPCAMM2
            """);

    @Test
    void theRightModulePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "M1: 32GB LPDDR5X LPCAMM2"));
    }

    @Test
    void aDdr5ModuleOnAnLpddrSiteBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "M1: 32GB DDR5 CAMM2"));
        assertEquals(
                "The 32 GB module in slot M1 is a CAMM2; the site is drilled for LPCAMM2, and the two are mounted "
                        + "differently.",
                Judged.sentence(RULE, BOARD, "M1: 32GB DDR5 CAMM2"));
    }

    @Test
    void aModuleThatIsNotMadeBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "M1: 32GB DDR5 LPCAMM2"));
    }

    @Test
    void andTheOtherWayRound() {
        Board ddr5 = BoardText.board("JESD318", "channel AB 1 spans=2 M1\ntakes DDR5 CAMM2");
        assertEquals(Weight.BLOCKS, Judged.by(RULE, ddr5, "M1: 32GB LPDDR5X LPCAMM2"));
        assertEquals(Weight.PASSES, Judged.by(RULE, ddr5, "M1: 32GB DDR5 CAMM2"));
    }
}
