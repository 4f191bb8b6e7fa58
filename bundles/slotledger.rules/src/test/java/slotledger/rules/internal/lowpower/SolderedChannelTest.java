package slotledger.rules.internal.lowpower;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: HP EliteOne 705 G2 guide, page 50 (flex mode); 2118 of 162,327 public inventories have both. */
class SolderedChannelTest {

    private static final MemoryRule RULE = new SolderedChannel();
    private static final Board BOARD = BoardText.board("HP EliteOne 705 G2", """
            form notebook
            channel A 1 *ONBOARD=8GB_DDR4-2400
            channel B 1 S1
            takes DDR4 SO-DIMM
            """);

    @Test
    void anEqualModuleMakesAllDual() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "S1: 8GB DDR4 SO-DIMM"));
        assertEquals(
                "8 GB soldered, 8 GB in sockets: all 16 GB run in dual channel.",
                Judged.sentence(RULE, BOARD, "S1: 8GB DDR4 SO-DIMM"));
    }

    @Test
    void aLargerOneLeavesARemainder() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "S1: 16GB DDR4 SO-DIMM"));
        assertEquals(
                "8 GB soldered, 16 GB in sockets: 16 GB run in dual channel and 8 GB alone.",
                Judged.sentence(RULE, BOARD, "S1: 16GB DDR4 SO-DIMM"));
    }

    @Test
    void anEmptySocketLeavesItAlone() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, ""));
        assertEquals(
                "The soldered 8 GB run with an empty channel beside them: all 8 GB run in single channel. A module of "
                        + "8 GB in the socket would make dual channel of all.",
                Judged.sentence(RULE, BOARD, ""));
    }

    @Test
    void boardsWithoutSolderedMemoryAreNotConcerned() {
        Board sockets = BoardText.board("sockets", "channel A 1 S1\nchannel B 1 S2\ntakes DDR4 SO-DIMM");
        assertEquals(Weight.PASSES, Judged.by(RULE, sockets, "S1: 8GB DDR4 SO-DIMM"));
    }
}
