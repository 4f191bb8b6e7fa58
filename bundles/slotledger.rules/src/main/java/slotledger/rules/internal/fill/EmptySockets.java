package slotledger.rules.internal.fill;

import java.util.ArrayList;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** An empty socket holds what the document wants in it. */
@Component(service = MemoryRule.class)
@RuleId("empty-sockets")
public final class EmptySockets extends Rule {

    public EmptySockets() {
        super(new RulePage(
                "empty-sockets",
                "Where a document wants airflow blanks, every empty socket of an installed processor holds one; a "
                        + "continuity module goes into RIMM sockets only.",
                Source.document("PowerEdge C6520 manual", "note on blanks in empty memory sockets"),
                "Open the machine: a blank is a piece of plastic of the height of a module, without contacts.",
                "Keep the blank of every socket that gets a module, and put one into every socket that becomes empty.",
                "A server has 16 sockets and 12 modules. 4 sockets are empty and want 4 blanks; 2 modules more free 2 "
                        + "blanks."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        boolean wanted = situation.board().fill().blank().filter(each -> each == Filler.AIR_BLANK).isPresent();
        Population population = situation.setup().population();
        List<Slot> slots = situation.board().slots();
        int empty = 0;
        boolean strange = false;
        for (int i = 0; i < slots.size(); i++) {
            SlotContent content = slots.get(i).isSocket() ? population.in(slots.get(i).label()) : null;
            if (content instanceof SlotContent.Filled filled) {
                strange |= isStrange(situation, filled.filler());
            } else if (content != null && content.isEmpty() && situation.isInstalled(i)) {
                empty++;
            }
        }
        if (strange) {
            collector.report(Weight.BLOCKS, () -> Statement.of("A continuity module goes into RIMM sockets only.")
                    .in(labels(situation, false)));
        }
        if (wanted) {
            int count = empty;
            collector.report(empty == 0 ? Weight.PASSES : Weight.CAUTION, () -> Statement.of(count == 0
                            ? "No socket is left without module or blank."
                            : "%s without a blank; cooling air takes the shorter way.".formatted(
                                    count == 1 ? "1 empty socket is" : count + " empty sockets are"))
                    .in(count == 0 ? List.of() : labels(situation, true))
                    .by(situation.board().sourceOf(BoardFact.FILL)));
        }
    }

    private static boolean isStrange(Situation situation, Filler filler) {
        return filler != Filler.AIR_BLANK && !situation.generations().contains(Generation.RDRAM);
    }

    private static List<String> labels(Situation situation, boolean empty) {
        List<String> labels = new ArrayList<>();
        List<Slot> slots = situation.board().slots();
        for (int i = 0; i < slots.size(); i++) {
            SlotContent content = situation.setup().population().in(slots.get(i).label());
            boolean named = empty ? content.isEmpty() && situation.isInstalled(i)
                    : content instanceof SlotContent.Filled filled && isStrange(situation, filled.filler());
            if (slots.get(i).isSocket() && named) {
                labels.add(slots.get(i).label());
            }
        }
        return labels;
    }
}
