package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo SR630 V3 guide: the population is identical between processors. */
class ProcessorsAlikeTest {

    private static final MemoryRule RULE = new ProcessorsAlike();
    private static final Board BOARD = BoardText.board("SR630 V3", """
            form server
            channel 0 1 A1 A2
            channel 1 2 B1 B2
            takes DDR4 DIMM registered
            """);

    @Test
    void theSameModulesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 B2: 16GB DDR4 DIMM; A2 B1: 8GB DDR4 DIMM"));
    }

    @Test
    void theSameTotalInOtherModulesIsACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1 A2: 16GB DDR4 DIMM; B1: 32GB DDR4 DIMM"));
        assertEquals(
                "Processor 1 holds 16 GB in A1, A2; processor 2 holds 32 GB in B1: the same total in other modules.",
                Judged.sentence(RULE, BOARD, "A1 A2: 16GB DDR4 DIMM; B1: 32GB DDR4 DIMM"));
    }

    @Test
    void anotherTotalIsLeftToTheOtherRule() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 16GB DDR4 DIMM; B1: 8GB DDR4 DIMM"));
    }
}
