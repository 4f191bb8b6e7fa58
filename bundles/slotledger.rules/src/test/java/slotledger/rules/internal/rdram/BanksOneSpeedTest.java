package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel Desktop Board D850GB manual, section 1.5.3, "the same speed as bank 0". */
class BanksOneSpeedTest {

    private static final MemoryRule RULE = new BanksOneSpeed();

    @Test
    void anyPairOfTheSameSpeedMayJoin() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1 RIMM2: 128MB RDRAM-800; RIMM3 RIMM4: "
                + "256MB RDRAM-800"));
    }

    @Test
    void aPairOfAnotherSpeedMayNot() {
        String population = "RIMM1 RIMM2: 128MB RDRAM-800; RIMM3 RIMM4: 256MB RDRAM-600";
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.GB, population));
        assertEquals("The 128 MB module in slot RIMM1 runs at 800 MT/s, the 256 MB module in slot RIMM3 at 600 MT/s: "
                + "all banks must be of one speed.", Judged.sentence(RULE, D850.GB, population));
    }

    @Test
    void onOneChannelTheSlowestSetsThePaceAndThatIsAnotherRule() {
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.ONE_CHANNEL, "R1: 128MB RDRAM-800; R2: 128MB "
                + "RDRAM-600")).reasons().size());
    }

    @Test
    void twoSpeedsWithinABankAreNoMatterOfThisRule() {
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.GB, "RIMM1: 128MB RDRAM-800; RIMM2: 128MB RDRAM-600"))
                .reasons().size());
    }

    @Test
    void anUnknownSpeedIsUnknownUnlessAllIsAlike() {
        String other = "RIMM1 RIMM2: 128MB RDRAM-800; RIMM3 RIMM4: 256MB RDRAM";
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, D850.GB, other));
        assertEquals("The speed of the 256 MB module in slot RIMM3 is not known, and all banks must be of one.",
                Judged.sentence(RULE, D850.GB, other));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1 RIMM2 RIMM3 RIMM4: 128MB RDRAM"));
    }
}
