package slotledger.rules.internal.ddr4;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge FC430 Owner's Manual: "more than two memory module capacities ... is not supported". */
class TwoCapacitiesTest {

    private static final MemoryRule RULE = new TwoCapacities();
    private static final String SOURCE = "T630";
    private static final Board BOARD = BoardText.board(SOURCE, """
            form server
            channel 0 1 A1 A5 A9
            takes DDR4 DIMM registered
            """);

    @Test
    void twoCapacitiesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM; A5: 16GB DDR4 DIMM"));
    }

    @Test
    void aThirdIsUnknown() {
        assertEquals(
                Weight.UNKNOWN,
                Judged.by(RULE, BOARD, "A1: 32GB DDR4 DIMM; A5: 16GB DDR4 DIMM; A9: 8GB DDR4 DIMM"));
    }

    @Test
    void theSentenceNamesCapacitiesAndSlots() {
        assertEquals(
                "The modules are of 3 capacities (32 GB in A1; 16 GB in A5; 8 GB in A9); makers' manuals allow two at "
                        + "most, this board's document doesn't say.",
                Judged.sentence(RULE, BOARD, "A1: 32GB DDR4 DIMM; A5: 16GB DDR4 DIMM; A9: 8GB DDR4 DIMM"));
    }
}
