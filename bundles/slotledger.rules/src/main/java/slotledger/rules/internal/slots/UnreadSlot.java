package slotledger.rules.internal.slots;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Slot;
import slotledger.model.machine.SlotContent;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** What is in every slot is known. */
@Component(service = MemoryRule.class)
@RuleId("unread-slot")
public final class UnreadSlot extends Rule {

    public UnreadSlot() {
        super(new RulePage(
                "unread-slot",
                "A population can be judged only where it is known what every slot holds.",
                Source.of(Ground.PRACTICE),
                "Open the machine, or read the firmware's list of modules, and write down what the slot holds.",
                "Correct the inventory and read it again.",
                "Slot 1 holds 8 GB, slot 2 says \"see note\". The total is 8 GB or more: nobody can say whether a "
                        + "limit of 16 GB is kept."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!situation.hasUnread()) {
            return;
        }
        for (Slot slot : situation.board().slots()) {
            if (situation.setup().population().in(slot.label()) instanceof SlotContent.Unread unread) {
                collector.report(Weight.UNKNOWN, () -> Statement.of(
                                "What is in slot %s could not be read: \"%s\".".formatted(slot.label(), unread.text()))
                        .in(List.of(slot.label()))
                        .missing(MissingFact.CONTENT));
            }
        }
    }
}
