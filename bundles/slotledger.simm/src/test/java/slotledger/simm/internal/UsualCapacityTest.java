package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.model.module.ModuleKind;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.MemoryRule;

/**
 * Outside check: labels whose capacity is printed, 1Mx36 = 4 MB and 4x36 = 16 MB, in two notes of the trade on SIMM
 * labels (networkingsandhardware, footslog); capacities of 72-pin SIMMs in the BrainBell A+ text.
 */
class UsualCapacityTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new UsualCapacity();

    @Override
    protected MemoryRule rule() {
        return new UsualCapacity();
    }

    @ParameterizedTest
    @CsvSource({
        "1M x 36, 4MB FPM SIMM_72 parity", "4M x 36, 16MB EDO SIMM_72 parity", "4M x 9, 4MB FPM SIMM_30 parity",
        "8M x 32, 32MB EDO SIMM_72 non-ECC", "256K x 9, 256KB FPM SIMM_30 parity"
    })
    void theLabelCountsWords(String label, String module) {
        ModuleKind kind = ModuleText.module(module);
        assertEquals(label, Depth.of(kind).orElseThrow().text(kind));
        assertEquals("All modules have a usual capacity: %s = %s.".formatted(kind.capacity(), label),
                Judged.sentence(RULE, Simm.PENTIUM, "S1: " + module));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1MB", "2MB", "4MB", "8MB", "16MB", "32MB", "64MB"})
    void capacitiesOf72PinSimmsDouble(String capacity) {
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.PENTIUM, "S1: " + capacity + " EDO SIMM_72"));
        boolean fourfold = "1MB 4MB 16MB".contains(capacity);
        assertEquals(fourfold ? Weight.PASSES : Weight.CAUTION,
                Judged.by(RULE, Simm.BOARD_486, "A1: " + capacity + " FPM SIMM_30"), capacity);
    }

    @Test
    void whatNobodyMakesIsACaution() {
        assertEquals("The 3 MB module in slot S1 is unusual: a 72-pin SIMM holds from 1 MB to 64 MB, doubling each "
                + "step.", Judged.sentence(RULE, Simm.PENTIUM, "S1: 3MB EDO SIMM_72"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, Simm.PENTIUM, "S1: 512KB EDO SIMM_72"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, Simm.PENTIUM, "S1: 128MB EDO SIMM_72"));
    }
}
