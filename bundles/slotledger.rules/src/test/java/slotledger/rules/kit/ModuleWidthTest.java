package slotledger.rules.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.ModuleKind;

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
}
