package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: System x3550 M4 guide p.46 (mixed modules run at 1.5 V). */
class OneVoltageTest {

    private static final MemoryRule RULE = new OneVoltage();
    private static final String SOURCE = "x3550 M4";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR3 DIMM volts=1350,1500
            """);

    @Test
    void lowAndPlainModulesRunTogetherAt15Volts() {
        assertEquals(
                Weight.PASSES,
                Judged.by(RULE, BOARD, "A1: 4GB DDR3 DIMM 1350/1500mV; A2: 4GB DDR3 DIMM 1500mV"));
        assertEquals(
                "All modules work at 1.5 V.",
                Judged.sentence(RULE, BOARD, "A1: 4GB DDR3 DIMM 1500mV; A2: 4GB DDR3 DIMM 1350/1500mV"));
    }

    @Test
    void aModuleFor135VoltsWorksAt15VoltsToo() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 4GB DDR3 DIMM 1350mV; A2: 4GB DDR3 DIMM 1500mV"));
    }

    @Test
    void modulesWithoutACommonVoltageBlock() {
        Board board = BoardText.board("none", """
                channel A 1 A1 A2
                takes DDR3 DIMM volts=1250,1500
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1: 4GB DDR3 DIMM 1250mV; A2: 4GB DDR3 DIMM 1500mV"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "A1: 4GB DDR3 DIMM 1250mV; A2: 4GB DDR3 DIMM"));
    }
}
