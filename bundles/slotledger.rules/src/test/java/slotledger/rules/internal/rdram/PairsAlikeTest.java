package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel Desktop Board D850GB manual, section 1.5.3, "identical in speed, size and density". */
class PairsAlikeTest {

    private static final MemoryRule RULE = new PairsAlike();

    @Test
    void aBankOfEqualModulesPassesWhateverTheOtherBankHolds() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB,
                "RIMM1 RIMM2: 128MB RDRAM-800 128Mbit; RIMM3 RIMM4: 256MB RDRAM-800 256Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1 RIMM2: 128MB"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "256MB RDRAM-800 128Mbit non-ECC 45ns", "128MB RDRAM-800 256Mbit non-ECC 45ns",
        "128MB RDRAM-600 128Mbit non-ECC 45ns", "128MB RDRAM-800 128Mbit ECC 45ns",
        "128MB RDRAM-800 128Mbit non-ECC 40ns"
    })
    void aDifferenceBlocks(String other) {
        String population = "RIMM1: 128MB RDRAM-800 128Mbit non-ECC 45ns; RIMM2: " + other;
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.GB, population));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.UNNAMED, population));
    }

    @Test
    void chipsAreComparedByTheDataTheyHold() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB,
                "RIMM1: 128MB RDRAM-800 128Mbit; RIMM2: 128MB RDRAM-800 144Mbit"));
    }

    @Test
    void whereABankHoldsTwoPairsEachPairIsAlike() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.X4000, "R1 R2: 256MB RDRAM-800; R3 R4: 128MB RDRAM-800"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.X4000, "R1 R3: 256MB RDRAM-800; R2 R4: 128MB RDRAM-800"));
    }

    @Test
    void anUnknownChipSizeIsTheMissingFact() {
        Reason reason = Judged.verdict(RULE, Judged.setup(D850.GB,
                "RIMM1: 128MB RDRAM-800 128Mbit; RIMM2: 128MB RDRAM-800")).reasons().get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(MissingFact.CHIP_SIZE), reason.missing());
    }
}
