package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: HP Hardware Reference Guide 8FJ83EA: DIMM 4, 2, 3, 1. */
class FillOrderHoldsTest {

    private static final MemoryRule RULE = new FillOrderHolds();
    private static final String SOURCE = "8FJ83EA";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 3 1
            channel B 1 4 2
            takes DDR4 DIMM unbuffered ecc=REFUSED
            order 4 2 3 1
            """);

    @Test
    void theFirstOfTheOrderPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "4: 8GB DDR4 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "4 2: 8GB DDR4 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "4 2 3: 8GB DDR4 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 2 3 4: 8GB DDR4 DIMM"));
    }

    @Test
    void othersLowerWhereTheOrderIsAdvice() {
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "1: 8GB DDR4 DIMM"));
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "1 2: 8GB DDR4 DIMM"));
        assertEquals(
                "2 modules: the order wants 4, 2; filled are 1, 2.",
                Judged.sentence(RULE, BOARD, "2 1: 8GB DDR4 DIMM"));
    }

    @Test
    void othersBlockWhereItBinds() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 3 1
                channel B 1 4 2
                takes DDR4 DIMM unbuffered ecc=REFUSED
                order 4 2 3 1
                fill required
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "1: 8GB DDR4 DIMM"));
    }
}
