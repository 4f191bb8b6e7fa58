package slotledger.rules.internal.ddr3;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; DDR3L-only boards from memory. */
class LowVoltageUnsaidTest {

    private static final MemoryRule RULE = new LowVoltageUnsaid();
    private static final Board SILENT = BoardText.board("none", "channel A 1 1 2\ntakes DDR3 SO-DIMM");

    @Test
    void aModuleForHighVoltageIsACautionWhereNobodySaysWhatTheSlotSupplies() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, SILENT, "1: 4GB DDR3 SO-DIMM 1500mV"));
        assertEquals("The 4 GB module in slot 2 may need 1.5 V; no document says whether the slot supplies more than "
                + "1.35 V.", Judged.sentence(RULE, SILENT, "1: 4GB DDR3 SO-DIMM 1350mV; 2: 4GB DDR3 SO-DIMM"));
    }

    @Test
    void aModuleForLowVoltagePasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1 2: 4GB DDR3 SO-DIMM 1350/1500mV"));
    }

    @Test
    void aModuleForLessIsNotSpokenOf() {
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(SILENT, "1: 4GB DDR3 SO-DIMM 1250mV")).reasons());
    }

    @Test
    void boardsThatSayAndDimmsAreNoMatter() {
        Board board = BoardText.board("none", "channel A 1 1\ntakes DDR3 SO-DIMM volts=1500");
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(board, "1: 4GB DDR3 SO-DIMM")).reasons());
        Board desktop = BoardText.board("none", "channel A 1 1\ntakes DDR3 DIMM");
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(desktop, "1: 4GB DDR3 DIMM 1500mV")).reasons());
    }
}
