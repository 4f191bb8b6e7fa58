package slotledger.rules.internal.lowpower;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: JEDEC press release on JESD318 (LPDDR5/5X on modules); older LPDDR from memory. */
class SolderedOrLpcammTest {

    private static final MemoryRule RULE = new SolderedOrLpcamm();
    private static final String SOURCE = "JESD318 press release";
    private static final Board SOLDERED = BoardText.board(SOURCE, """
            form notebook
            channel A 1 *ONBOARD_A=4GB_LPDDR4X-4266
            channel B 1 *ONBOARD_B=4GB_LPDDR4X-4266
            takes LPDDR4X soldered
            """);
    private static final Board SITE = BoardText.board(SOURCE, """
            form notebook
            channel AB 1 spans=2 M1
            takes LPDDR5X LPCAMM2
            """);

    @Test
    void solderedMemoryStays() {
        assertEquals(Weight.PASSES, Judged.by(RULE, SOLDERED, ""));
        assertEquals("8 GB of low-power memory are soldered (4 GB in ONBOARD_A, ONBOARD_B): they stay as they are.",
                Judged.sentence(RULE, SOLDERED, ""));
    }

    @Test
    void anLpcamm2ModulePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, SITE, "M1: 32GB LPDDR5X-7500 LPCAMM2"));
    }

    @Test
    void olderLowPowerMemoryComesOnNoModule() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, SITE, "M1: 16GB LPDDR4X LPCAMM2"));
        assertEquals("The 16 GB module in slot M1 can't be: LPDDR4X comes only soldered.",
                Judged.sentence(RULE, SITE, "M1: 16GB LPDDR4X LPCAMM2"));
    }

    @Test
    void lowPowerMemoryInAnyOtherFormBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, SITE, "M1: 16GB LPDDR5X SO-DIMM"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SITE, "M1: 16GB LPDDR5X"));
    }
}
