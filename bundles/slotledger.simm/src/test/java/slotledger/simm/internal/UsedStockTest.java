package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class UsedStockTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new UsedStock();

    @Override
    protected MemoryRule rule() {
        return new UsedStock();
    }

    @Test
    void modulesOfThisFamilyComeWithAdvice() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30"));
        assertEquals(0, Judged.verdict(RULE, Judged.setup(Simm.BOARD_486, "")).reasons().size());
    }
}
