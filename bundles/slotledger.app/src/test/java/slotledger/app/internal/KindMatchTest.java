package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

class KindMatchTest {

    private static final ModuleKind PLANNED =
            ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8)).withRanks(1).with(Rate.of(2666));

    private final KindMatch match = new KindMatch(Optional.of(Rate.of(2400)));

    @Test
    void anInventoryThatKnowsOnlyTheCapacityIsBelieved() {
        assertTrue(matches(ModuleKind.ofCapacity(Capacity.ofGiB(8))));
    }

    @Test
    void anotherCapacityNeverMatches() {
        assertFalse(matches(ModuleKind.ofCapacity(Capacity.ofGiB(4))));
    }

    @Test
    void aFactBothKnowMustAgree() {
        assertFalse(matches(PLANNED.with(Generation.DDR3)));
        assertFalse(matches(PLANNED.withRanks(2)));
    }

    @Test
    void theRateItRunsAtIsAsGoodAsTheRateOnItsLabel() {
        assertTrue(matches(PLANNED));
        assertTrue(matches(PLANNED.with(Rate.of(2400))));
        assertFalse(matches(PLANNED.with(Rate.of(2133))));
    }

    @Test
    void aFillerLooksEmptyToFirmware() {
        SlotContent filler = new SlotContent.Filled(Filler.AIR_BLANK);
        assertTrue(match.matches(filler, SlotContent.EMPTY));
        assertFalse(match.matches(SlotContent.EMPTY, SlotContent.of(PLANNED)));
        assertFalse(match.matches(SlotContent.of(PLANNED), SlotContent.EMPTY));
    }

    private boolean matches(ModuleKind found) {
        return match.matches(SlotContent.of(PLANNED), SlotContent.of(found));
    }
}
