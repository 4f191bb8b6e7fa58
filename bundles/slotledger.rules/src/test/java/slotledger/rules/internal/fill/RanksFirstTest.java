package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge T630 Owner's Manual, the module with most ranks in the first socket of a channel. */
class RanksFirstTest {

    private static final MemoryRule RULE = new RanksFirst();
    private static final String BOARD = """
            form server
            channel 0 1 A1 A5
            takes DDR4 DIMM registered
            order A1 A5
            fill ranksFirst""";

    @Test
    void moreRanksComeFirst() {
        Board board = BoardText.board("T630", BOARD + " required");
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 32GB DDR4 DIMM 4Rx4; A5: 16GB DDR4 DIMM 2Rx4"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1 A5: 16GB DDR4 DIMM 2Rx4"));
        String wrong = "A1: 16GB DDR4 DIMM 2Rx4; A5: 32GB DDR4 DIMM 4Rx4";
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, wrong));
        assertEquals("4 ranks in slot A5 come after 2 in slot A1; the module with more ranks goes first.",
                Judged.sentence(RULE, board, wrong));
        assertEquals(Weight.LOWERS, Judged.by(RULE, BoardText.board("T630", BOARD), wrong));
    }

    @Test
    void unknownRanksLeaveARequiredOrderOpen() {
        String open = "A1: 16GB DDR4 DIMM; A5: 16GB DDR4 DIMM 2Rx4";
        Board board = BoardText.board("T630", BOARD + " required");
        Reason reason = Judged.verdict(RULE, Judged.setup(board, open)).reasons().get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(MissingFact.RANKS), reason.missing());
        assertEquals(Weight.CAUTION, Judged.by(RULE, BoardText.board("T630", BOARD), open));
    }

    @Test
    void withoutTheDocumentsWordAnyOrderGoes() {
        Board board = BoardText.board("none", BOARD.replace("fill ranksFirst", ""));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM 2Rx4; A5: 32GB DDR4 DIMM 4Rx4"));
    }
}
