package slotledger.rules.internal.server;

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
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A server holds modules of at most two capacities. */
@Component(service = MemoryRule.class)
@RuleId("server-capacities")
public final class TwoCapacities extends Rule {

    public TwoCapacities() {
        super(new RulePage(
                "server-capacities",
                "A server with DDR4 or older modules holds at most two different capacities.",
                Source.document(
                        "PowerEdge T630 and other DDR4 Owner's Manuals",
                        "general memory module installation guidelines"),
                "See in the board's manual how many capacities may be mixed.",
                "Use one or two capacities.",
                "A server with 16 GB and 32 GB modules may hold both; 8 GB modules beside them are a third "
                        + "capacity."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR3, Generation.DDR4);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.board().form() == BoardForm.SERVER && ModuleFacts.capacities(situation).size() > 2) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            ("The modules are of %d capacities; makers' guides allow two, this board's document "
                                    + "doesn't say.")
                                    .formatted(ModuleFacts.capacities(situation).size()))
                    .in(situation.filled())
                    .missing(MissingFact.BOARD_FACT));
        }
    }
}
