package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class ContactsMatchTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new ContactsMatch();

    @Override
    protected MemoryRule rule() {
        return new ContactsMatch();
    }

    @Test
    void tinGoesToTin() {
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30 tin"));
        assertEquals("The 1 MB module in slot A1 has gold contacts, its socket has tin: they may fret.",
                Judged.sentence(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30 gold"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, Simm.BOARD_486, "A1: 1MB FPM SIMM_30 gold"));
    }

    @Test
    void unknownContactsAreACautionThatSaysHowToSee() {
        assertEquals("Look at them in daylight: gold is yellow, tin is silver grey.", Judged.verdict(RULE,
                Judged.setup(Simm.BOARD_486, "A1: 1MB FPM SIMM_30")).reasons().get(0).remedy());
        assertEquals(0, Judged.verdict(RULE, Judged.setup(Simm.PENTIUM, "S1: 8MB EDO SIMM_72 gold")).reasons().size());
    }
}
