package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside checks: System x3550 M4 guide p.46 (L = 1.35 V, operable at 1.5 V), HP 705 G1 guide (1.5 V). */
class VoltageFitsTest {

    private static final MemoryRule RULE = new VoltageFits();
    private static final String SOURCE = "x3550 M4";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR3 SO-DIMM volts=1350
            """);

    @Test
    void aPlainModuleBlocksOnA135VoltBoard() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 4GB DDR3 SO-DIMM 1500mV"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 4GB DDR3 SO-DIMM 1350/1500mV"));
    }

    @Test
    void anUnknownVoltageOfDdr3IsUnknownWhereItMatters() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 4GB DDR3 SO-DIMM"));
    }

    @Test
    void allDdr3WorksAt15Volts() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR3 DIMM volts=1500
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 4GB DDR3 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 4GB DDR3 DIMM 1350mV"));
    }

    @Test
    void theOneVoltageOfOtherGenerationsIsTaken() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR4 DIMM volts=1200
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 8GB DDR4 DIMM"));
    }

    @Test
    void ddr400At26VoltsWorksInA25VoltSlot() {
        Board board = BoardText.board(SOURCE, """
                channel A 1 A1
                takes DDR DIMM volts=2500
                """);
        assertEquals(Weight.PASSES, Judged.by(RULE, board, "A1: 512MB DDR-400 DIMM 2600mV"));
    }
}
