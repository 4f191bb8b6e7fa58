package slotledger.rules.internal.ddr5;

import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.rules.RulePage;
import slotledger.rules.internal.server.OneStacking;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;

/** DDR5 modules of stacked chips and of plain chips are not mixed. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-stacks")
public final class OneDdr5Stacking extends OneStacking {

    public OneDdr5Stacking() {
        super(new RulePage(
                "ddr5-stacks",
                "DDR5 modules of stacked chips (3DS) and of plain chips don't run together.",
                Source.document(
                        "PowerEdge R860 Installation and Service Manual; Lenovo ThinkSystem SR630 V3 User Guide",
                        "general memory module installation guidelines; independent mode installation rules"),
                "Read the label: 2S2Rx4 or 2S4Rx4 means stacked chips, 2Rx4 plain ones. Registered DDR5 modules below "
                        + "128 GB have plain chips (from memory).",
                "Use stacked modules only, or plain ones only.",
                "A server holds 8 x 64 GB 2Rx4 of plain chips. 256 GB modules 2S4Rx4 are 4 dies high (2 x 16 chips x "
                        + "4 x 16 Gbit / 8 = 256 GB): beside the 64 GB modules they are not allowed."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }
}
