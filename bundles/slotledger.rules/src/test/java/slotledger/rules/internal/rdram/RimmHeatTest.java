package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: OptiPlex GX400 service manual, "modules run very hot". */
class RimmHeatTest {

    private static final MemoryRule RULE = new RimmHeat();

    @Test
    void modulesAreHotContinuityModulesAreNot() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, D850.GB, "RIMM1: 128MB RDRAM"));
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.GB, "RIMM1: CONTINUITY_184")).reasons().size());
    }
}
