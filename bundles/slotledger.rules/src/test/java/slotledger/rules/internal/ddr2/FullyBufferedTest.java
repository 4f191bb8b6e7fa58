package slotledger.rules.internal.ddr2;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; JESD205 and MO-256 from memory: 240 contacts, the notch elsewhere. */
class FullyBufferedTest {

    private static final MemoryRule RULE = new FullyBuffered();
    private static final Board SILENT = BoardText.board("from memory", "channel A 1 1 2\ntakes DDR2 DIMM");

    @Test
    void aFullyBufferedModuleDoesNotGoIntoASlotNotMadeForIt() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, SILENT, "1: 2GB DDR2-667 DIMM fully-buffered ECC"));
    }

    @Test
    void otherDdr2Passes() {
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1 2: 2GB DDR2-667 DIMM registered ECC"));
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(SILENT, "1: 2GB DDR2-667 DIMM")).reasons());
    }

    @Test
    void aDocumentThatNamesBufferingsIsLeftToThem() {
        Board board = BoardText.board("from memory", "channel A 1 1\ntakes DDR2 DIMM fully-buffered");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(board, "1: 2GB DDR2-667 DIMM fully-buffered ECC")).reasons());
    }
}
