package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;

/** Outside check: PowerEdge R740xd2 manual, Table 10: B slots belong to processor 2. */
class AbsentProcessorTest {

    private static final Board BOARD = BoardText.board("R740xd2", """
            form server
            channel 0 1 A1
            channel 1 2 B1
            takes DDR4 DIMM registered
            """);

    private static Verdict verdict(int processors) {
        return Judged.verdict(new AbsentProcessor(), new Setup(BOARD, processors, Optional.empty(), Optional.empty(),
                Redundancy.NONE,
                ModuleText.population(BOARD, "A1 B1: 16GB DDR4 DIMM registered")));
    }

    @Test
    void bothProcessorsServeTheirSlots() {
        assertEquals(Weight.PASSES, verdict(2).weight());
    }

    @Test
    void aSlotOfAnAbsentProcessorBlocks() {
        assertEquals(Weight.BLOCKS, verdict(1).weight());
        assertEquals("The 16 GB module in slot B1 belongs to processor 2; only 1 installed.",
                verdict(1).reasons().get(0).sentence());
    }
}
