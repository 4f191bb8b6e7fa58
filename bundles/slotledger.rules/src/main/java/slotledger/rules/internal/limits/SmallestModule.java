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

/** No module is smaller than the document allows. */
@Component(service = MemoryRule.class)
@RuleId("smallest-module")
public final class SmallestModule extends ModuleRule {

    public SmallestModule() {
        super(new RulePage(
                "smallest-module",
                "No module is smaller than the document allows.",
                Source.of(Ground.PRACTICE),
                "The sizes of modules allowed stand in the board's manual under memory; the smallest one in its table "
                        + "is meant.",
                "Use a module of at least the smallest size.",
                "A board allows modules from 1 GB to 4 GB. An old 512 MB module of the right kind is not seen."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        Optional<Capacity> smallest = module.way().smallestModule();
        return smallest.isEmpty() ? SILENT : module.kind().capacity().atLeast(smallest.get()) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s is smaller than the %s the document asks for."
                        .formatted(module, module.way().smallestModule().orElseThrow()))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.TAKES));
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module is smaller than the document allows.")
                .by(situation.board().sourceOf(BoardFact.TAKES));
    }
}
