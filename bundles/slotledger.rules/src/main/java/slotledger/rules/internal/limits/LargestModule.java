package slotledger.rules.internal.limits;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** No module is larger than the document allows in one slot. */
@Component(service = MemoryRule.class)
@RuleId("largest-module")
public final class LargestModule extends ModuleRule {

    public LargestModule() {
        super(new RulePage(
                "largest-module",
                "No module is larger than the document allows in one slot.",
                Source.of(Ground.PRACTICE),
                "The largest module stands in the board's manual under memory; it may differ from grade to grade. A "
                        + "newer firmware may allow more; its notes say so.",
                "Use more and smaller modules, or find a document that allows the larger one and add it to the "
                        + "catalog.",
                "A board allows 8 GB a slot in 4 slots. 2 x 16 GB are 32 GB as well as 4 x 8 GB, but only 4 x 8 GB "
                        + "are allowed."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        Optional<Capacity> largest = module.way().largestModule();
        return largest.isEmpty() ? SILENT : largest.get().atLeast(module.kind().capacity()) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s is larger than the %s the document allows in one slot."
                        .formatted(module, module.way().largestModule().orElseThrow()))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.LARGEST_MODULE));
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module is larger than the document allows in one slot.")
                .by(situation.board().sourceOf(BoardFact.LARGEST_MODULE));
    }
}
