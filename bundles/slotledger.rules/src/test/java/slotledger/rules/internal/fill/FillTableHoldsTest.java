package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge T630 Owner's Manual, Table 31. */
class FillTableHoldsTest {

    private static final MemoryRule RULE = new FillTableHolds();
    private static final String SOURCE = "T630";
    private static final Board BOARD = BoardText.board(SOURCE, """
            form server
            channel 0 1 A1 A5 A9
            channel 1 1 A2 A6 A10
            channel 2 1 A3 A7 A11
            channel 3 1 A4 A8 A12
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            row 1 A1 2400
            row 1 A1 A2 2400
            row 1 A1 A2 A3 A4 2400
            fill required tableOnly
            """);

    @Test
    void thePrintedSocketsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 8GB DDR4 DIMM registered"));
    }

    @Test
    void otherSocketsBlockWhereTheTableBinds() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1 A5: 8GB DDR4 DIMM registered"));
        assertEquals(
                "The fill table prints other sockets for 2 modules: A1, A2.",
                Judged.sentence(RULE, BOARD, "A1 A5: 8GB DDR4 DIMM registered"));
    }

    @Test
    void aCountWithoutARowBlocksWhereOnlyTheTableIsAllowed() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1 A2 A3: 8GB DDR4 DIMM registered"));
    }

    @Test
    void otherSocketsLowerWhereTheTableIsAdvice() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1 A2
                channel B 1 B1 B2
                takes DDR4 DIMM
                row 1 A2
                row 1 A2 B2
                """);
        assertEquals(Weight.LOWERS, Judged.by(RULE, board, "A1 B1: 8GB DDR4 DIMM"));
    }

    @Test
    void aCountWithoutARowIsLeftToTheOrderElsewhere() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1 A2
                channel B 1 B1 B2
                takes DDR4 DIMM
                row 1 A2
                row 1 A2 B2
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1 A2 B2: 8GB DDR4 DIMM"));
    }
}
