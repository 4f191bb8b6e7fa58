package slotledger.rules.internal.ddr4;

import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.rules.RulePage;
import slotledger.rules.internal.server.OneStacking;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;

/** DDR4 modules of stacked chips and of plain chips are not mixed. */
@Component(service = MemoryRule.class)
@RuleId("ddr4-stacks")
public final class OneDdr4Stacking extends OneStacking {

    public OneDdr4Stacking() {
        super(new RulePage(
                "ddr4-stacks",
                "DDR4 modules of stacked chips (3DS) and of plain chips don't run together.",
                Source.document(
                        "Fujitsu PRIMERGY RX4770 M6 Upgrade and Maintenance Manual",
                        "Table 3, page 240: 3DS RDIMM goes with 3DS RDIMM only"),
                "Read the label: 2S2Rx4 or 2S4Rx4 means stacked chips, 2Rx4 plain ones. Registered DDR4 modules below "
                        + "64 GB have plain chips (from memory).",
                "Use stacked modules only, or plain ones only.",
                "A server holds 8 x 64 GB 2Rx4 of plain 16 Gbit chips. 4 x 128 GB 2S2Rx4 have stacked chips: beside "
                        + "the 64 GB modules they are not allowed; 12 x 128 GB alone are."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR4);
    }
}
