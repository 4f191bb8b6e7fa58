package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: System x3250 M5 guide, Table 8: pairs 1+3, then 2+4. */
class MatchedSetsTest {

    private static final MemoryRule RULE = new MatchedSets();
    private static final String SOURCE = "x3250 M5";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel 1 1 1 2
            channel 2 1 3 4
            takes DDR3 DIMM unbuffered ecc=REQUIRED
            order 1 3 2 4
            fill required sets=2
            """);

    @Test
    void pairsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 3: 4GB DDR3 DIMM ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 3: 4GB DDR3 DIMM ECC; 2 4: 8GB DDR3 DIMM ECC"));
    }

    @Test
    void anUnlikePairBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 4GB DDR3 DIMM ECC; 3: 8GB DDR3 DIMM ECC"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 4GB DDR3 DIMM 1Rx8; 3: 4GB DDR3 DIMM 2Rx8"));
    }

    @Test
    void anOddModuleBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1: 4GB DDR3 DIMM ECC"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1 3 2: 4GB DDR3 DIMM ECC"));
    }

    @Test
    void aPrintedRowAllowsOneModuleAlone() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 DIMM1_A DIMM2_A
                channel B 1 DIMM1_B DIMM2_B
                takes DDR2 DIMM
                order DIMM1_A DIMM1_B DIMM2_A DIMM2_B
                row 1 DIMM1_A
                fill required sets=2
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "DIMM1_A: 1GB DDR2 DIMM"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "DIMM1_A DIMM1_B DIMM2_A: 1GB DDR2 DIMM"));
    }

    @Test
    void withoutAnOrderEveryKindComesInWholeSets() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 1 2
                channel B 1 3 4
                takes DDR3 DIMM
                fill sets=2
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "1 2: 4GB DDR3 DIMM; 3 4: 8GB DDR3 DIMM"));
        assertEquals(Weight.LOWERS, Judged.by(RULE, board, "1: 4GB DDR3 DIMM; 3: 8GB DDR3 DIMM"));
    }

    /** A module of which little is known may be like each of two that are not like each other. */
    @Test
    void theOrderWithinASetIsIrrelevant() {
        Board board = BoardText.board(SOURCE, "channel A 1 1 2 3\ntakes DDR3 DIMM\norder 1 2 3\nfill required sets=3");
        List<String> kinds = List.of("4GB DDR3 DIMM", "4GB DDR3 DIMM 1Rx8", "4GB DDR3 DIMM 2Rx8");
        for (int first = 0; first < 3; first++) {
            assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "1: " + kinds.get(first) + "; 2: "
                    + kinds.get((first + 1) % 3) + "; 3: " + kinds.get((first + 2) % 3)));
        }
    }
}
