package slotledger.rules.internal.sdr;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; a PC66 module on a 100 MHz board (PC100 specification, from memory). */
class BusGradeTest {

    private static final MemoryRule RULE = new BusGrade();
    private static final String FRAME = """
            channel A 1 1 2 3
            takes SDR DIMM unbuffered%s
            %s
            """;
    private static final Board AT_100 = BoardText.board("from memory", FRAME.formatted("", "limit 100"));

    @Test
    void aModuleSlowerThanTheBusBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, AT_100, "1: 64MB SDR-66 DIMM"));
        assertEquals("The 64 MB module in slot 2 is rated 66 MT/s; the bus of the board runs at 100 MT/s.",
                Judged.sentence(RULE, AT_100, "1: 64MB SDR-100 DIMM; 2: 64MB SDR-66 DIMM"));
    }

    @Test
    void theGradeOfTheBusAndFasterOnesPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, AT_100, "1: 64MB SDR-100 DIMM; 2: 64MB SDR-133 DIMM"));
        Board at67 = BoardText.board("from memory", FRAME.formatted("", "limit 67"));
        assertEquals(Weight.PASSES, Judged.by(RULE, at67, "1: 64MB SDR-66 DIMM"));
    }

    @Test
    void anUnknownGradeIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, AT_100, "1: 64MB SDR DIMM"));
    }

    @Test
    void theProcessorDecidesTheBus() {
        Board board = BoardText.board("from memory",
                FRAME.formatted("", "processor Celeron 66\nprocessor PentiumIII 100"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "1: 64MB SDR-66 DIMM"));
        assertEquals("The 64 MB module in slot 1 is rated 66 MT/s; the bus of the board runs at 66 or 100 MT/s, "
                + "depending on the processor.", Judged.sentence(RULE, board, "1: 64MB SDR-66 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "1: 64MB SDR-100 DIMM"));
        Board fast = BoardText.board("from memory",
                FRAME.formatted("", "processor One 100\nprocessor Two 133"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, fast, "1: 64MB SDR-66 DIMM"));
    }

    @Test
    void aDocumentThatNamesGradesIsLeftToThem() {
        Board board = BoardText.board("from memory", FRAME.formatted(" rates=66,100", "limit 100"));
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(board, "1: 64MB SDR-66 DIMM")).reasons());
    }
}
