package slotledger.rules.internal.family;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the families of JEDEC JESD21-C, section 4, before DDR. */
class FamilyKnownTest {

    private static final MemoryRule RULE = new FamilyKnown();
    private static final String SOURCE = "JESD21-C";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 S1 S2
            takes EDO DIMM
            """);

    @Test
    void aFamilyWithoutRulesIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "S1 S2: 16MB EDO"));
        assertEquals("There are no rules for this family (EDO).", Judged.sentence(RULE, BOARD, "S1 S2: 16MB EDO"));
    }

    @Test
    void aFamilyWithRulesSaysNothing() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 S1
                takes DDR4 DIMM
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "S1: 4GB DDR4 DIMM"));
    }
}
