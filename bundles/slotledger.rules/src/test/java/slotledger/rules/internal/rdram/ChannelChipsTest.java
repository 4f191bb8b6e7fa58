package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Abit CX6 manual, at most 32 chips a channel. */
class ChannelChipsTest {

    private static final MemoryRule RULE = new ChannelChips();

    /** Four 16-chip RIMMs on two channels are the limit exactly, and 2 GB. */
    @Test
    void thirtyTwoChipsAreAllowed() {
        String full = "RIMM1 RIMM2 RIMM3 RIMM4: 512MB RDRAM-800 256Mbit";
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, full));
        assertEquals("2 GB", Judged.setup(D850.GB, full).population().total().toString());
    }

    @Test
    void oneChipMoreIsNot() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.ONE_CHANNEL, "R1 R2: 256MB RDRAM 128Mbit"));
        String over = "R1 R2: 256MB RDRAM 128Mbit; R3: 64MB RDRAM 128Mbit";
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.ONE_CHANNEL, over));
        assertEquals("The modules in channel A have 36 chips; a channel carries at most 32.",
                Judged.sentence(RULE, D850.ONE_CHANNEL, over));
    }

    @Test
    void twoModulesOfUnknownChipsCanNotBeTooManyThreeCan() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.ONE_CHANNEL, "R1 R2: 256MB RDRAM"));
        Reason reason = Judged.verdict(RULE, Judged.setup(D850.ONE_CHANNEL, "R1 R2 R3: 256MB RDRAM")).reasons().get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(MissingFact.CHIP_SIZE), reason.missing());
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.ONE_CHANNEL, "R1 R2 R3: 64MB RDRAM"));
    }

    @Test
    void aWideModuleHasHalfOfItsChipsOnEachChannel() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.WIDE, "R1 R2: 1GB RDRAM RIMM_232 256Mbit"));
    }
}
