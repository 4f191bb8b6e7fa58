package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the memory table of board PMPGF001: 1 GB modules at 800, 2 GB modules at 667 and 533 MT/s. */
class GradeAllowedTest {

    private static final MemoryRule RULE = new GradeAllowed();
    private static final String SOURCE = "PMPGF001";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 1 3
            channel B 1 2 4
            takes DDR2 DIMM rates=800 largest=1GB
            takes DDR2 DIMM rates=533,667 largest=2GB
            """);

    @Test
    void eitherGradePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 2: 1GB DDR2-800 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 2: 2GB DDR2-667 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1: 2GB DDR2-533 DIMM; 2: 2GB DDR2-667 DIMM"));
    }

    @Test
    void allModulesFollowOneLine() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 1GB DDR2-800 DIMM; 2: 2GB DDR2-667 DIMM"));
    }

    @Test
    void anotherGradeBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 1GB DDR2-1066 DIMM"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "1: 1GB DDR2 DIMM"));
    }

    @Test
    void aGradePrintedRoundedIsTheSame() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1: 2GB DDR2-666 DIMM"));
    }
}
