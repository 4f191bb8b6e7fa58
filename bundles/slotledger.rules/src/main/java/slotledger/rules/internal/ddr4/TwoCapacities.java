package slotledger.rules.internal.ddr4;

import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardForm;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR4 server holds modules of at most two capacities. */
@Component(service = MemoryRule.class)
@RuleId("ddr4-capacities")
public final class TwoCapacities extends Rule {

    private static final int MOST = 2;

    public TwoCapacities() {
        super(new RulePage(
                "ddr4-capacities",
                "A server with DDR4 modules holds at most two different capacities.",
                Source.document(
                        "PowerEdge FC430 Owner's Manual; PowerEdge C6520 Installation and Service Manual",
                        "general memory module installation guidelines: more than two capacities not supported"),
                "Read the capacity on every label and count the different ones; the board's manual says how many it "
                        + "allows. Some allow only one, such as that of the PowerEdge R7425.",
                "Use one or two capacities: exchange the rarest one, or move its modules to another machine.",
                "A server holds 4 x 32 GB and 4 x 16 GB: two capacities. With 2 x 8 GB beside them there are "
                        + "three, and 208 GB in 10 modules that the makers' manuals don't support; 6 x 32 GB and 1 x "
                        + "16 GB make the same 208 GB of two."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR4);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.board().form() != BoardForm.SERVER || situation.described().isEmpty()) {
            return;
        }
        int count = ModuleFacts.capacities(situation).size();
        if (count > MOST) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            ("The modules are of %d capacities (%s); makers' manuals allow two at most, this board's "
                                    + "document doesn't say.")
                                    .formatted(count, Slots.byCapacity(situation.described())))
                    .in(Slots.labels(situation.described()))
                    .missing(MissingFact.BOARD_FACT));
        } else {
            collector.report(Weight.PASSES, () -> Statement.of("The modules are of %s (%s)."
                    .formatted(count == 1 ? "one capacity" : "two capacities, which is the most that makers' manuals "
                            + "allow", Slots.byCapacity(situation.described()))));
        }
    }
}
