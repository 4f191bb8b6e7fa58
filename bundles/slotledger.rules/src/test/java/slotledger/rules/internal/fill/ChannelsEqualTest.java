package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: HP Hardware Reference Guide 8FJ83EA and the splits printed by a hardware magazine. */
class ChannelsEqualTest {

    private static final MemoryRule RULE = new ChannelsEqual();
    private static final String SOURCE = "8FJ83EA";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 3 1
            channel B 1 4 2
            takes DDR4 DIMM unbuffered ecc=REFUSED
            """);

    @Test
    void equalTotalsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "4: 8GB DDR4 DIMM; 1 3: 4GB DDR4 DIMM"));
    }

    @Test
    void unequalTotalsLower() {
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "3: 8GB DDR4 DIMM; 4: 4GB DDR4 DIMM"));
        assertEquals(
                "The channels hold A 8 GB, B 4 GB: dual channel with 4 GB alone.",
                Judged.sentence(RULE, BOARD, "3: 8GB DDR4 DIMM; 4: 4GB DDR4 DIMM"));
    }

    @Test
    void oneChannelAloneLowers() {
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "3: 8GB DDR4 DIMM"));
        assertEquals(
                "1 of 2 channels filled (A 8 GB): single channel.",
                Judged.sentence(RULE, BOARD, "3: 8GB DDR4 DIMM"));
    }
}
