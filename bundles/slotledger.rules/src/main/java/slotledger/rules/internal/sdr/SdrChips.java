package slotledger.rules.internal.sdr;

import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ChipSize;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.rules.RulePage;
import slotledger.rules.internal.chips.UnsaidChips;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;

/** SDR chips of more than 128 Mbit need a board that is known to take them. */
@Component(service = MemoryRule.class)
@RuleId("sdr-large-chips")
public final class SdrChips extends UnsaidChips {

    public SdrChips() {
        super(new RulePage(
                "sdr-large-chips",
                "SDR boards know chips up to 128 Mbit; only later ones know 256 Mbit, and the others see half of such "
                        + "a module or nothing.",
                Source.document("PC Hardware in a Nutshell, 3rd edition",
                        "chapter 5.4: the 440BX takes chips of 16, 64 and 128 Mbit, the 815 takes 256 Mbit too"),
                "Count the chips without one for ECC on each side: a 256 MB module with 16 chips has 128 Mbit chips, "
                        + "one with 8 chips has 256 Mbit chips. The name of the chipset stands on the board.",
                "Choose a module of the same capacity with 16 chips, or find the largest chip in the board's document "
                        + "and add it to the board file.",
                "A 256 MB module of 8 chips: 256 MB x 8 bits / 8 chips = 256 Mbit each. A 440BX board sees 128 MB of "
                        + "it or nothing; with 16 chips of 128 Mbit it sees all 256 MB."),
                Generation.SDR, ChipSize.ofMbit(128), true);
    }
}
