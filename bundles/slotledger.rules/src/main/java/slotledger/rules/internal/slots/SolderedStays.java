package slotledger.rules.internal.slots;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
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

/** Soldered memory is there and stays. */
@Component(service = MemoryRule.class)
@RuleId("soldered")
public final class SolderedStays extends Rule {

    public SolderedStays() {
        super(new RulePage(
                "soldered",
                "Soldered memory is part of the board: it can neither be taken out nor changed.",
                Source.of(Ground.PRACTICE),
                "The board's manual says how much is soldered. The firmware counts it with the modules, often as one "
                        + "whose slot you don't find when you open the machine.",
                "Leave the soldered memory as it is and change only sockets. If the machine has another amount "
                        + "soldered, it is another board: give it a catalog file of its own.",
                "A notebook has 4 GB soldered and one socket. It can hold 4 + 8 = 12 GB, never 8 GB alone."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        boolean passed = false;
        boolean objected = false;
        for (int i = 0; i < situation.board().slots().size(); i++) {
            Slot slot = situation.board().slots().get(i);
            if (slot.use() != SlotUse.SOLDERED) {
                continue;
            }
            SlotContent content = situation.setup().population().in(slot.label());
            if (content instanceof SlotContent.Unread) {
                continue;
            }
            Weight weight = weigh(slot, content);
            passed |= weight == Weight.PASSES;
            if (weight != Weight.PASSES) {
                objected = true;
                collector.report(weight, () -> Statement.of(sentence(slot, content, weight))
                        .in(List.of(slot.label()))
                        .by(situation.board().sourceOf(BoardFact.SOLDERED))
                        .missing(MissingFact.CONTENT));
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("The soldered memory is as the board has it.")
                    .by(situation.board().sourceOf(BoardFact.SOLDERED)));
        }
    }

    private static Weight weigh(Slot slot, SlotContent content) {
        if (slot.soldered().isEmpty()) {
            return content instanceof SlotContent.Holds ? Weight.PASSES : Weight.UNKNOWN;
        }
        return content instanceof SlotContent.Holds holds
                && holds.kind().capacity().equals(slot.soldered().get().capacity()) ? Weight.PASSES : Weight.BLOCKS;
    }

    private static String sentence(Slot slot, SlotContent content, Weight weight) {
        return weight == Weight.UNKNOWN
                ? "It is not known what is soldered as %s.".formatted(slot.label())
                : "The board has %s soldered as %s; the population says %s.".formatted(
                        slot.soldered().orElseThrow().capacity(), slot.label(),
                        content.isEmpty() ? "nothing" : content.toString());
    }
}
