package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel data sheets give 16 GB for first Core i5 and 32 GB for the next (from memory). */
class ProcessorTotalTest {

    private static final MemoryRule RULE = new ProcessorTotal();
    private static final String SOURCE = "from memory";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 1 3
            channel B 1 2 4
            takes DDR3 DIMM
            processor Small 1333 16GB
            processor Large 1333 32GB
            """);

    @Test
    void whatEveryProcessorAddressesPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1 2: 8GB DDR3 DIMM"));
    }

    @Test
    void whatOnlySomeAddressIsUnknownWithoutTheProcessor() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "1 2 3 4: 8GB DDR3 DIMM"));
    }

    @Test
    void whatNoneAddressesBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1 2 3 4: 16GB DDR3 DIMM"));
        assertEquals("64 GB in all are more than the processor is made for (every processor that fits).",
                Judged.sentence(RULE, BOARD, "1 2 3 4: 16GB DDR3 DIMM"));
    }
}
