package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the Macintosh II text, "completely filled with 4 SIMMs of the same size, or left ... empty". */
class BanksWholeTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new BanksWhole();

    @Override
    protected MemoryRule rule() {
        return new BanksWhole();
    }

    @ParameterizedTest
    @CsvSource({
        "A1 A2 A3 A4, PASSES", "B1 B2 B3 B4, PASSES", "A1 A2 A3 A4 B1 B2 B3 B4, PASSES", "A1, BLOCKS",
        "A1 A2 A3, BLOCKS", "A1 A2 B1 B2, BLOCKS", "A1 A2 A3 A4 B1 B2, BLOCKS"
    })
    void aBankIsFilledAsAWholeOrEmpty(String slots, Weight weight) {
        assertEquals(weight, Judged.by(RULE, Simm.BOARD_486, slots + ": 1MB FPM SIMM_30"));
    }

    @Test
    void theSentenceNamesTheBankAndItsSockets() {
        assertEquals("Bank 1 holds 2 modules in 4 sockets (B1, B2, B3, B4): a bank is filled as a whole or empty.",
                Judged.sentence(RULE, Simm.BOARD_486, "A1 A2 A3 A4 B1 B2: 1MB FPM SIMM_30"));
    }

    @Test
    void somethingThatCouldNotBeReadFillsItsSocket() {
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.BOARD_486, "A1 A2 A3: 1MB FPM SIMM_30; A4: ?"));
    }
}
