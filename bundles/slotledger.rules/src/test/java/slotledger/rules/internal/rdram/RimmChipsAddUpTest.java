package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the capacities of the D850GB manual, table 5, are checked whole in D850TableTest. */
class RimmChipsAddUpTest {

    private static final MemoryRule RULE = new RimmChipsAddUp();

    @Test
    void wholeChipsPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1: 96MB RDRAM 128Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1: 192MB RDRAM 288Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.WIDE, "R1: 1GB RDRAM RIMM_232 256Mbit"));
    }

    @Test
    void tooManyChipsOrHalfAChipBlock() {
        assertEquals("The 512 MB module in slot RIMM1 can't exist: 512 MB of chips that hold 128 Mbit are 32 chips; it "
                + "can have 1 to 16.", Judged.sentence(RULE, D850.GB, "RIMM1: 512MB RDRAM RIMM_184 128Mbit"));
        assertEquals("The 72 MB module in slot RIMM1 can't exist: 72 MB of chips that hold 128 Mbit are 4.5 chips; it "
                + "can have 1 to 16.", Judged.sentence(RULE, D850.GB, "RIMM1: 72MB RDRAM RIMM_184 144Mbit"));
    }
}
