package slotledger.rules.internal.ddr2;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: board manual PMPGF001: x16 double-sided modules are not supported. */
class DoubleSidedX16Test {

    private static final MemoryRule RULE = new DoubleSidedX16();
    private static final Board BOARD = BoardText.board("PMPGF001", """
            channel A 1 1 3
            channel B 1 2 4
            takes DDR2 DIMM unbuffered
            """);

    @Test
    void x16ChipsOnTwoRanksAreACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "1: 512MB DDR2-667 DIMM unbuffered 2Rx16"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1: 512MB DDR2-667 DIMM unbuffered 1Rx16"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1: 1GB DDR2-667 DIMM unbuffered 2Rx8"));
    }

    /** techsupportforum: 8 chips of 64M x 16 are two ranks. */
    @Test
    void theRanksFollowFromWidthAndChips() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "1: 1GB DDR2-667 DIMM unbuffered x16 1024Mbit"));
    }

    @Test
    void notebooksRunThem() {
        Board notebook = BoardText.board("from memory", "channel A 1 1\ntakes DDR2 SO-DIMM");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(notebook, "1: 1GB DDR2-667 SO-DIMM 2Rx16")).reasons());
    }

    /** Each slot described twice: x8 on up to two ranks, x16 on one. */
    @Test
    void aDocumentThatForbidsThemIsWrittenAsTwoWaysForEachSlot() {
        StringBuilder text = new StringBuilder("channel A 1 1 3\nchannel B 1 2 4\n");
        for (int slot = 1; slot <= 4; slot++) {
            text.append("takes DDR2 DIMM unbuffered widths=x8 ranks=2 only=").append(slot).append('\n');
            text.append("takes DDR2 DIMM unbuffered widths=x16 ranks=1 only=").append(slot).append('\n');
        }
        Board board = BoardText.board("PMPGF001", text.toString());
        String x8 = "1GB DDR2-667 DIMM unbuffered non-ECC 2Rx8";
        String x16 = "512MB DDR2-667 DIMM unbuffered non-ECC %dRx16";
        assertEquals(Weight.PASSES, weight(board, "1 2: " + x8 + "; 3 4: " + x16.formatted(1)));
        assertEquals(Weight.BLOCKS, weight(board, "1 2: " + x8 + "; 3 4: " + x16.formatted(2)));
    }

    private static Weight weight(Board board, String population) {
        return Judged.byAll(board, population).weight();
    }
}
