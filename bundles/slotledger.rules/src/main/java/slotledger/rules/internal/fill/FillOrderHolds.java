package slotledger.rules.internal.fill;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The sockets that come first in the order are filled. */
@Component(service = MemoryRule.class)
@RuleId("fill-order")
public final class FillOrderHolds extends Rule {

    public FillOrderHolds() {
        super(new RulePage(
                "fill-order",
                "The sockets that come first in the document's order are filled first.",
                Source.document("HP Hardware Reference Guide 8FJ83EA", "Populating DIMM sockets: DIMM 4, 2, 3, 1"),
                "The order stands in the board's manual, often also on a label inside the cover; the colour of the "
                        + "sockets alone doesn't tell it.",
                "Move the modules to the sockets that come first.",
                "An order is 4, 2, 3, 1. Two modules go into 4 and 2. In 1 and 2 the machine may start, but not as "
                        + "the maker tested it."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<String> order = situation.order();
        List<String> filled = situation.filled();
        if (order.isEmpty() || filled.isEmpty() || FillFacts.hasRowsForCount(situation)
                || FillFacts.hasRedundancySets(situation)) {
            return;
        }
        boolean holds = true;
        for (int i = 0; i < filled.size(); i++) {
            holds &= i < order.size() && filled.contains(order.get(i));
        }
        Weight weight = holds ? Weight.PASSES : departure(situation.board().fill().binding());
        boolean passes = holds;
        collector.report(weight, () -> Statement.of(passes
                        ? "The sockets filled come first in the document's order."
                        : "%s: the order wants %s; filled are %s.".formatted(FillFacts.modules(filled.size()),
                                String.join(", ", order.subList(0, Math.min(filled.size(), order.size()))),
                                String.join(", ", filled)))
                .in(filled)
                .by(situation.board().sourceOf(BoardFact.FILL)));
    }
}
