package slotledger.rules.internal.fill;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Larger modules are in the sockets that come first. */
@Component(service = MemoryRule.class)
@RuleId("largest-first")
public final class LargestFirst extends Rule {

    public LargestFirst() {
        super(new RulePage(
                "largest-first",
                "Larger modules go into the sockets that come first in the order.",
                Source.document("Fujitsu PRIMERGY RX2540 M1 upgrade guide", "descending capacity within a channel"),
                "Compare the capacities in the order of the sockets.",
                "Exchange the modules so that no smaller one comes before a larger one.",
                "The order is A2, B2, A1, B1. With 8, 8, 4, 4 GB in that order the rule holds; with 4, 4, 8, 8 GB "
                        + "it does not."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!situation.board().fill().largestFirst() || situation.filled().size() < 2 || situation.hasUnread()) {
            return;
        }
        List<String> sequence = FillFacts.sequence(situation);
        for (int i = 1; i < sequence.size(); i++) {
            String before = sequence.get(i - 1);
            String after = sequence.get(i);
            Capacity first = situation.setup().population().in(before).capacity();
            Capacity second = situation.setup().population().in(after).capacity();
            if (!first.atLeast(second)) {
                collector.report(departure(situation.board().fill().binding()), () -> Statement.of(
                                "%s in slot %s come after %s in slot %s; the larger module goes first."
                                        .formatted(second, after, first, before))
                        .in(List.of(before, after))
                        .by(situation.board().sourceOf(BoardFact.FILL)));
                return;
            }
        }
        if (!sequence.isEmpty()) {
            collector.report(Weight.PASSES, () -> Statement.of("No smaller module comes before a larger one.")
                    .by(situation.board().sourceOf(BoardFact.FILL)));
        }
    }
}
