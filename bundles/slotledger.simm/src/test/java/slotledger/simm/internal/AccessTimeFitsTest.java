package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class AccessTimeFitsTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new AccessTimeFits();

    @Override
    protected MemoryRule rule() {
        return new AccessTimeFits();
    }

    @Test
    void fasterIsFineSlowerIsNot() {
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30 60ns; A2: 1MB 70ns"));
        assertEquals("The 1 MB module in slot A2 has 80 ns; the board wants 70 ns or less.",
                Judged.sentence(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30 60ns; A2: 1MB 80ns"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30 80ns"));
    }

    @Test
    void unknownNamesTheFactAndASilentBoardSaysNothing() {
        assertEquals(Optional.of(MissingFact.ACCESS_TIME), Judged.verdict(RULE,
                Judged.setup(Simm.BOARD_486, "A1: 1MB FPM SIMM_30")).reasons().get(0).missing());
        assertEquals(0, Judged.verdict(RULE, Judged.setup(Simm.PENTIUM, "S1: 8MB EDO SIMM_72")).reasons().size());
    }
}
