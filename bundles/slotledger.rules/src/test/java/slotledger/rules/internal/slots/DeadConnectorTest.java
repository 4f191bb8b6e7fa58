package slotledger.rules.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Lenovo ThinkServer guide, Table 7: connectors 1, 4, 9 and 12 are not wired. */
class DeadConnectorTest {

    private static final MemoryRule RULE = new DeadConnector();
    private static final String SOURCE = "ThinkServer 3836";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel 1 1 !1 3 2
            channel 2 1 !4 6 5
            channel 3 1 8 7
            takes DDR3 DIMM
            """);

    @Test
    void theFirstOfTheSequencePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "3 6 8: 4GB DDR3 DIMM"));
    }

    @Test
    void aConnectorThatIsNotWiredBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1 6 8: 4GB DDR3 DIMM"));
        assertEquals(
                "The 4 GB module in slot 1 is in a connector that is not wired.",
                Judged.sentence(RULE, BOARD, "1: 4GB DDR3 DIMM"));
    }
}
