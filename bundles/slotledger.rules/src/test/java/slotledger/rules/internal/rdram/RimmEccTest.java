package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel Desktop Board D850GB manual, section 1.5.3, "ECC only if all modules are ECC". */
class RimmEccTest {

    private static final MemoryRule RULE = new RimmEcc();

    @Test
    void modulesThatAllHaveTheBitsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1: 128MB RDRAM x18; RIMM2: 128MB RDRAM ECC"));
    }

    @Test
    void onePlainModuleNeedsEccTurnedOff() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, D850.GB, "RIMM1: 128MB RDRAM ECC; RIMM2: 128MB RDRAM x16"));
        assertEquals("The module in RIMM2 has no bits for ECC: the board starts only with ECC off in its setup.",
                Judged.sentence(RULE, D850.GB, "RIMM1: 128MB RDRAM ECC; RIMM2: 128MB RDRAM non-ECC"));
    }

    @Test
    void aBoardWithoutEccTakesEither() {
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.WIDE, "R1: 128MB RDRAM ECC")).reasons().size());
    }
}
