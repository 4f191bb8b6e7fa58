package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge T630 Owner's Manual: the channels are filled alike. */
class ChannelsAlikeTest {

    private static final MemoryRule RULE = new ChannelsAlike();
    private static final String SOURCE = "T630";
    private static final Board BOARD = BoardText.board(SOURCE, """
            form server
            channel 0 1 A1 A5
            channel 1 1 A2 A6
            takes DDR4 DIMM registered
            """);

    @Test
    void alikeChannelsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 16GB DDR4 DIMM"));
    }

    @Test
    void theSameTotalOtherwiseIsACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1: 16GB DDR4 DIMM; A2 A6: 8GB DDR4 DIMM"));
    }

    @Test
    void desktopsAreNotConcerned() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1 A2
                channel B 1 B1 B2
                takes DDR4 DIMM
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM; B1 B2: 8GB DDR4 DIMM"));
    }

    @Test
    void channelsOfDifferentProcessorsAreAnotherRule() {
        Board board = BoardText.board(SOURCE, """
                form server
                channel 0 1 A1
                channel 1 2 B1 B2
                takes DDR4 DIMM registered
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM; B1 B2: 8GB DDR4 DIMM"));
    }
}
