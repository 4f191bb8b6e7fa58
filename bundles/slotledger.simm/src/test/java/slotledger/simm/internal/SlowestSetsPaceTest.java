package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class SlowestSetsPaceTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new SlowestSetsPace();

    @Override
    protected MemoryRule rule() {
        return new SlowestSetsPace();
    }

    @Test
    void theSlowerBankSlowsTheFaster() {
        String mixed = "S1 S2: 8MB EDO SIMM_72 60ns; S3 S4: 8MB EDO SIMM_72 70ns";
        assertEquals(Weight.LOWERS, Judged.by(RULE, Simm.PENTIUM, mixed));
        assertEquals("Modules of 60 ns are timed like those of 70 ns.", Judged.sentence(RULE, Simm.PENTIUM, mixed));
    }

    @Test
    void onABoardMadeForTheSlowerNothingIsLost() {
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.BOARD_486,
                "A1 A2 A3 A4: 1MB FPM SIMM_30 60ns; B1 B2 B3 B4: 1MB FPM SIMM_30 70ns"));
    }

    @Test
    void fpmSlowsEdoWhereBanksMayDiffer() {
        Board board = BoardText.board("none", """
                channel A 1 A1 B1
                takes FPM SIMM_72 only=A1
                takes EDO SIMM_72 only=B1
                bank 0 A1
                bank 1 B1
                """);
        assertEquals("FPM and EDO modules are mixed: all run as FPM at best.",
                Judged.sentence(RULE, board, "A1: 8MB FPM SIMM_72; B1: 8MB EDO SIMM_72"));
    }
}
