package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the encyclopaedia text on SIMMs, "identical size and speed" within a bank. */
class AlikeInBankTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new AlikeInBank();
    private static final String FIRST = "A1 A2 A3: 4MB FPM SIMM_30 parity 60ns; A4: ";

    @Override
    protected MemoryRule rule() {
        return new AlikeInBank();
    }

    @Test
    void banksMayDifferFromEachOther() {
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.BOARD_486,
                "A1 A2 A3 A4: 4MB FPM SIMM_30 parity 60ns; B1 B2 B3 B4: 1MB FPM SIMM_30 non-ECC 70ns"));
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.BOARD_486, "A1 A2 A3 A4: 4MB SIMM_30"));
    }

    @ParameterizedTest
    @CsvSource({
        "1MB FPM SIMM_30 parity 60ns, 4 MB and 1 MB", "4MB EDO SIMM_30 parity 60ns, FPM and EDO",
        "4MB FPM SIMM_30 parity 70ns, 60 ns and 70 ns", "4MB FPM SIMM_30 non-ECC 60ns, parity and no parity"
    })
    void aDifferenceWithinABankBlocks(String module, String difference) {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, Simm.BOARD_486, FIRST + module));
        assertEquals("The modules in A1 and A4 of bank 0 are not identical: " + difference + ".",
                Judged.sentence(RULE, Simm.BOARD_486, FIRST + module));
    }

    @ParameterizedTest
    @CsvSource({
        "4MB SIMM_30 parity 60ns, GENERATION", "4MB FPM SIMM_30 parity, ACCESS_TIME",
        "4MB FPM SIMM_30 60ns, ERROR_CHECK"
    })
    void whatOneModuleDoesNotTellIsMissing(String module, MissingFact fact) {
        Reason reason = Judged.verdict(RULE, Judged.setup(Simm.BOARD_486, FIRST + module)).reasons().get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(fact), reason.missing());
    }

    /** A module of which little is known may be like each of two that are not like each other. */
    @Test
    void itIsIrrelevantWhichModuleStandsFirst() {
        String known = "60ns; A3: 4MB FPM SIMM_30 parity 70ns";
        assertEquals(Weight.BLOCKS, Judged.by(RULE, Simm.BOARD_486,
                "A1: 4MB FPM SIMM_30 parity; A2: 4MB FPM SIMM_30 parity " + known));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, Simm.BOARD_486,
                "A4: 4MB FPM SIMM_30 parity; A2: 4MB FPM SIMM_30 parity " + known));
    }
}
