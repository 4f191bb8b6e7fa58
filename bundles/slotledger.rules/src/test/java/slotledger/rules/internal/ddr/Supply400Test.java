package slotledger.rules.internal.ddr;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel Desktop Board D845GBV memory page, "2.5 V only"; 2.6 V for DDR-400 from memory (JESD79). */
class Supply400Test {

    private static final MemoryRule RULE = new Supply400();
    private static final String FRAME = "channel A 1 1 2\ntakes DDR DIMM unbuffered volts=%s\n%s";

    @Test
    void aSlowerBoardRunsDdr400AtItsOwnRate() {
        Board board = BoardText.board("D845GBV", FRAME.formatted("2500", "limit 266"));
        String population = "1: 256MB DDR-333 DIMM; 2: 256MB DDR-400 DIMM";
        assertEquals(Weight.PASSES, Judged.by(RULE, board, population));
        assertEquals("The 256 MB module in slot 2 is DDR-400 and runs at the board's 266 MT/s, for which 2.5 V are "
                + "enough.", Judged.sentence(RULE, board, population));
    }

    @Test
    void atItsFullRateItWantsMore() {
        Board board = BoardText.board("from memory", FRAME.formatted("2500", "limit 400"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, board, "1: 256MB DDR-400 DIMM"));
        Board unlimited = BoardText.board("from memory", FRAME.formatted("2500", ""));
        assertEquals(Weight.CAUTION, Judged.by(RULE, unlimited, "1: 256MB DDR-400 DIMM"));
    }

    @Test
    void aBoardFor26VoltsOrOfUnknownVoltageIsNoMatter() {
        Board made = BoardText.board("from memory", FRAME.formatted("2600", "limit 400"));
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(made, "1: 256MB DDR-400 DIMM")).reasons());
        Board silent = BoardText.board("from memory", "channel A 1 1\ntakes DDR DIMM");
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(silent, "1: 256MB DDR-400 DIMM")).reasons());
    }
}
