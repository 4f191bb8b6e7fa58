package slotledger.rules.internal.slots;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.SlotUse;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A module is only put where the document says what the slot takes. */
@Component(service = MemoryRule.class)
@RuleId("slot-described")
public final class SlotDescribed extends Rule {

    public SlotDescribed() {
        super(new RulePage(
                "slot-described",
                "A module is judged by what the document says of its slot.",
                Source.of(Ground.PRACTICE),
                "Look in the board's manual what the slot takes, and add it to the board file.",
                "Use a slot that the document describes for these modules.",
                "A document describes slots 1 and 2 for modules up to 8 GB and says nothing of slot 3: a module in "
                        + "slot 3 is not judged."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        for (Placed module : situation.modules()) {
            if (module.takes().isPresent() || module.slot().use() != SlotUse.SOCKET) {
                continue;
            }
            boolean elsewhere = situation.anyWayDescribes(module.slot());
            collector.report(elsewhere ? Weight.BLOCKS : Weight.UNKNOWN, () -> Statement.of(elsewhere
                            ? "%s is in a slot that stays empty in this way of filling.".formatted(module)
                            : "No document says what slot %s takes, and it holds %s.".formatted(module.label(),
                                    module.kind().capacity()))
                    .in(module)
                    .by(situation.board().sourceOf(BoardFact.TAKES))
                    .missing(MissingFact.BOARD_FACT));
        }
    }
}
