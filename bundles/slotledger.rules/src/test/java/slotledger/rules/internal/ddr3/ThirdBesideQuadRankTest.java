package slotledger.rules.internal.ddr3;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge M620 Owner's Manual: two quad-rank modules a channel, or three of one or two ranks. */
class ThirdBesideQuadRankTest {

    private static final MemoryRule RULE = new ThirdBesideQuadRank();
    private static final Board M620 = BoardText.board("PowerEdge M620 Owner's Manual", """
            form server
            channel 0 1 A1 A5 A9
            channel 1 1 A2 A6 A10
            takes DDR3 DIMM registered load-reduced ecc=REQUIRED channelRanks=8
            """);
    private static final String QUAD = "16GB DDR3-1066 DIMM registered ECC 4Rx4";
    private static final String DUAL = "8GB DDR3-1066 DIMM registered ECC 2Rx4";
    private static final String SINGLE = "4GB DDR3-1066 DIMM registered ECC 1Rx4";

    @Test
    void twoQuadRankModulesOrThreeOthersPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, M620, "A1 A5: " + QUAD));
        assertEquals(Weight.PASSES, Judged.by(RULE, M620, "A1: " + QUAD + "; A5: " + DUAL));
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(M620, "A1 A5 A9: " + DUAL)).reasons());
        assertEquals(Weight.PASSES, Judged.byAll(M620, "A1 A5 A9 A2 A6 A10: " + DUAL).weight());
    }

    @Test
    void noThirdModuleGoesBesideAQuadRankOne() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, M620, "A1 A5 A9: " + QUAD));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, M620, "A1: " + QUAD + "; A5 A9: " + SINGLE));
        assertEquals("Channel 1 holds 3 modules, one of them quad-rank; beside a quad-rank module there is room for "
                + "one more.", Judged.sentence(RULE, M620, "A1: " + QUAD + "; A2: " + QUAD + "; A6 A10: " + SINGLE));
    }

    @Test
    void theModulesOfOtherChannelsDoNotCount() {
        assertEquals(Weight.PASSES, Judged.by(RULE, M620, "A1 A5: " + QUAD + "; A2 A6 A10: " + SINGLE));
    }

    @Test
    void unknownRanksOfThreeRegisteredModulesAreUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, M620, "A1 A5 A9: 8GB DDR3 DIMM registered ECC"));
        Board desktop = BoardText.board("none", "channel A 1 1 2 3\ntakes DDR3 DIMM unbuffered");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(desktop, "1 2 3: 4GB DDR3 DIMM unbuffered non-ECC")).reasons());
    }

    @Test
    void loadReducedModulesShowFewerRanks() {
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(M620, "A1 A5 A9: 32GB DDR3 DIMM load-reduced ECC 4Rx4")).reasons());
    }
}
