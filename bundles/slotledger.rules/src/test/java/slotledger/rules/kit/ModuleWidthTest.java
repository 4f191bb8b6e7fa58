package slotledger.rules.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;

/** Rules take widths from the form alone, so that they know them where the generation is unknown. */
class ModuleWidthTest {

    @Test
    void theWidthOfAChannelIsThatOfTheTableOfFamilies() {
        for (Family family : Families.all()) {
            ModuleKind kind = ModuleKind.of(family.generations().iterator().next(), family.form(), family.largest());
            if (family.channelBits().isPresent()) {
                assertEquals(family.channelBits(), OptionalInt.of(ModuleFacts.channelBits(kind)), family.name());
            }
        }
    }

    /** What the table gives no check bits carries none; the other way round nothing follows. */
    @Test
    void aFormWithoutCheckBitsInTheTableCarriesNone() {
        for (Form form : List.of(Form.MICRO_DIMM, Form.LPCAMM2)) {
            for (Family family : Families.all()) {
                if (family.form() == form) {
                    ModuleKind kind = ModuleKind.of(family.generations().iterator().next(), form, family.largest());
                    assertEquals(List.of(), List.copyOf(family.checkBits()), family.name());
                    assertEquals(Optional.of(false), ModuleFacts.checkBits(kind), family.name());
                }
            }
        }
        assertEquals(Optional.empty(),
                ModuleFacts.checkBits(ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8))));
    }
}
