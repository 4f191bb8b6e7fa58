package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; the bins are from memory. */
class RimmAccessTimeTest {

    private static final MemoryRule RULE = new RimmAccessTime();

    @Test
    void asFastOrFasterPassesSlowerBlocks() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.ONE_CHANNEL, "R1: 64MB RDRAM-800 45ns; R2: 64MB 40ns"));
        assertEquals("The 64 MB module in slot R2 answers after 50 ns; the board wants 45 ns or less.",
                Judged.sentence(RULE, D850.ONE_CHANNEL, "R1: 64MB RDRAM-800 45ns; R2: 64MB 50ns"));
    }

    @Test
    void unknownNamesTheFactAndASilentBoardSaysNothing() {
        Reason reason = Judged.verdict(RULE, Judged.setup(D850.ONE_CHANNEL, "R1: 64MB RDRAM-800")).reasons().get(0);
        assertEquals(Optional.of(MissingFact.ACCESS_TIME), reason.missing());
        assertEquals("Read the number after the rate on its label: PC800-45 means 45 ns.", reason.remedy());
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.GB, "RIMM1: 64MB RDRAM-800")).reasons().size());
    }
}
