package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: note of the PowerEdge C6520 manual that empty sockets need blanks. */
class EmptySocketsTest {

    private static final MemoryRule RULE = new EmptySockets();
    private static final String SERVER = """
            form server
            channel 0 1 A1 A2
            channel 1 2 B1 B2
            takes DDR4 DIMM registered
            fill blank=AIR_BLANK
            """;

    @Test
    void everyEmptySocketHoldsABlank() {
        Board board = BoardText.board("C6520", SERVER);
        assertEquals(Weight.PASSES,
                Judged.by(RULE, board, "A1 B1: 16GB DDR4 DIMM; A2 B2: AIR_BLANK"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, board, "A1 B1: 16GB DDR4 DIMM; A2: AIR_BLANK"));
        assertEquals("2 empty sockets are without a blank; cooling air takes the shorter way.",
                Judged.sentence(RULE, board, "A1 B1: 16GB DDR4 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1 A2 B1 B2: 16GB DDR4 DIMM"));
    }

    @Test
    void withoutTheDocumentsWordSocketsStayEmpty() {
        Board board = BoardText.board("none", SERVER.replace("fill blank=AIR_BLANK", ""));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM; A2: AIR_BLANK"));
    }

    @Test
    void aContinuityModuleGoesIntoRimmSocketsOnly() {
        Board board = BoardText.board("none", SERVER);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1: 16GB DDR4 DIMM; A2: CONTINUITY_184"));
        Board rambus = BoardText.board("none", "channel A 1 R1 R2\ntakes RDRAM RIMM_184\nfill blank=CONTINUITY_184");
        assertEquals(Weight.PASSES, Judged.by(RULE, rambus, "R1: 128MB RDRAM RIMM_184; R2: CONTINUITY_184"));
    }
}
