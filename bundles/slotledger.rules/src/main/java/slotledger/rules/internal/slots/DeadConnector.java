package slotledger.rules.internal.slots;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.SlotUse;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Connectors that are not wired stay empty. */
@Component(service = MemoryRule.class)
@RuleId("dead-connector")
public final class DeadConnector extends Rule {

    public DeadConnector() {
        super(new RulePage(
                "dead-connector",
                "A connector that is there but not wired takes no module.",
                Source.document(
                        "Lenovo ThinkServer user guide (machine types 3836 and others)",
                        "Table 7: connectors 1, 4, 9 and 12"),
                "It looks like the others. The board's manual names the slots that work; the firmware doesn't count a "
                        + "module in it.",
                "Move the module to a slot that works.",
                "A server has 8 connectors for a processor, but 1 and 4 are not wired: a module of 4 GB in 1 adds 0 "
                        + "GB, one in 3 adds 4 GB."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        for (Placed module : situation.modules()) {
            if (module.slot().use() == SlotUse.DEAD) {
                collector.report(Weight.BLOCKS, () -> Statement.of(
                                "%s is in a connector that is not wired.".formatted(module))
                        .in(module)
                        .by(situation.board().sourceOf(BoardFact.SLOTS)));
            }
        }
    }
}
