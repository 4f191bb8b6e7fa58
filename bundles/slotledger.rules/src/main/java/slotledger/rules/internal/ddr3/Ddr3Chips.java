package slotledger.rules.internal.ddr3;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ChipSize;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.rules.RulePage;
import slotledger.rules.internal.chips.UnsaidChips;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;

/** DDR3 chips of 8 Gbit need a board that is known to take them. */
@Component(service = MemoryRule.class)
@RuleId("ddr3-large-chips")
public final class Ddr3Chips extends UnsaidChips {

    public Ddr3Chips() {
        super(new RulePage(
                "ddr3-large-chips",
                "Most DDR3 desktops and notebooks know chips up to 4 Gbit; chips of 8 Gbit came late, and older "
                        + "controllers don't start with them.",
                new Source(Ground.MEMORY, "memory controllers of desktop and notebook processors with DDR3", "",
                        Optional.empty()),
                "Count the chips without one for ECC: an 8 GB module with 16 chips (2Rx8) has 4 Gbit chips, one with "
                        + "8 chips (1Rx8) has 8 Gbit chips. A 16 GB module without register always has 8 Gbit chips.",
                "Choose an 8 GB module 2Rx8 with 16 chips, or find the largest chip in the board's document and add "
                        + "it to the board file.",
                "An 8 GB module 1Rx8: 64 bits / 8 = 8 chips, 8 GB x 8 bits / 8 chips = 8 Gbit each. A board that "
                        + "knows 4 Gbit needs 2Rx8: 16 chips x 4 Gbit / 8 = 8 GB."),
                Generation.DDR3, ChipSize.ofGbit(4), false);
    }
}
