package slotledger.rules.internal.ddr5;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.server.Servers;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR5 server holds modules of one capacity. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-capacities")
public final class OneCapacity extends Rule {

    public OneCapacity() {
        super(new RulePage(
                "ddr5-capacities",
                "A server with DDR5 modules holds one capacity, unless its document allows more.",
                Source.document(
                        "PowerEdge R860 Installation and Service Manual",
                        "general memory module installation guidelines: mixing of capacities not supported"),
                "Read the capacity on every label. The board's manual says whether two may be mixed: that of the "
                        + "Lenovo SR630 V3 allows it where all its sockets are filled.",
                "Use modules of one capacity, or look in the board's manual for the mixtures it allows.",
                "A server holds 8 x 32 GB = 256 GB. 8 x 16 GB beside them make 384 GB of two capacities; 16 x 32 GB = "
                        + "512 GB or 8 x 64 GB = 512 GB are of one."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        if (modules.isEmpty() || !Servers.concerns(situation)) {
            return;
        }
        Capacity first = modules.get(0).kind().capacity();
        boolean one = true;
        for (int i = 1; i < modules.size(); i++) {
            one &= modules.get(i).kind().capacity().equals(first);
        }
        if (one) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules hold %s.".formatted(first)));
        } else {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            ("The modules are of different capacities (%s); makers' manuals forbid or limit that, "
                                    + "this board's document doesn't say.")
                                    .formatted(Slots.byCapacity(modules)))
                    .in(Slots.labels(modules))
                    .missing(MissingFact.BOARD_FACT));
        }
    }
}
