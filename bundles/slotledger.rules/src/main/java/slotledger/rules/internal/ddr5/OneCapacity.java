package slotledger.rules.internal.ddr5;

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

/** A DDR5 server holds modules of one capacity. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-capacities")
public final class OneCapacity extends Rule {

    public OneCapacity() {
        super(new RulePage(
                "ddr5-capacities",
                "A server with DDR5 modules holds one capacity only.",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 memory guide; PowerEdge DDR5 manuals",
                        "general rules of installation"),
                "See in the board's manual whether capacities may be mixed.",
                "Use modules of one capacity.",
                "A server holds 8 x 32 GB. Adding 8 x 16 GB makes two capacities: 16 x 32 GB, or 8 x 64 GB, are the "
                        + "safe ways."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.board().form() == BoardForm.SERVER && ModuleFacts.capacities(situation).size() > 1) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            ("The modules are of %d capacities; makers' guides allow one, this board's document "
                                    + "doesn't say.")
                                    .formatted(ModuleFacts.capacities(situation).size()))
                    .in(situation.filled())
                    .missing(MissingFact.BOARD_FACT));
        }
    }
}
