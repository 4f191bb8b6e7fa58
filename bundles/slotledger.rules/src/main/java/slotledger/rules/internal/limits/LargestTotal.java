package slotledger.rules.internal.limits;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The modules together are no larger than the document allows. */
@Component(service = MemoryRule.class)
@RuleId("largest-total")
public final class LargestTotal extends Rule {

    public LargestTotal() {
        super(new RulePage(
                "largest-total",
                "All modules together, soldered memory among them, are no larger than the document allows.",
                Source.of(Ground.PRACTICE),
                "The largest total stands in the board's manual under memory. It can be less than slots x largest "
                        + "module, and later firmware can raise it.",
                "Plan less, or find a document that allows more and add it to the catalog.",
                "A board has 4 slots for modules up to 8 GB, but the document says 16 GB in all. 4 x 8 GB = 32 GB "
                        + "are not allowed, 4 x 4 GB are."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Optional<Capacity> most = situation.board().largestTotal();
        if (most.isEmpty()) {
            return;
        }
        boolean fits = most.get().atLeast(situation.total());
        collector.report(fits ? Weight.PASSES : Weight.BLOCKS, () -> Statement.of(
                        "%s in all %s the %s the document allows.".formatted(situation.total(),
                                fits ? "are within" : "are more than", most.get()))
                .by(situation.board().sourceOf(BoardFact.LARGEST_TOTAL)));
    }
}
