package slotledger.rules.internal.kind;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The grade of a module is one the document allows. */
@Component(service = MemoryRule.class)
@RuleId("grade")
public final class GradeAllowed extends ModuleRule {

    public GradeAllowed() {
        super(new RulePage(
                "grade",
                "Where a document names the grades of modules it allows, only those are planned with.",
                Source.document("Board manual PMPGF001", "memory table: the largest module hangs on the grade"),
                "Read the grade on the label: DDR4-2666 or PC4-21300 is 2666 MT/s, PC2-6400 is 800 MT/s.",
                "Choose a module of a grade the document names.",
                "A board takes 1 GB modules of grade 800 and 2 GB modules of grade 667 or 533. A 2 GB module of grade "
                        + "800 follows neither line and is not allowed."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().rates().isEmpty()) {
            return SILENT;
        }
        Optional<Rate> rate = module.kind().rate();
        if (rate.isEmpty()) {
            return UNKNOWN;
        }
        for (Rate allowed : module.way().rates()) {
            if (Math.abs(allowed.megatransfers() - rate.get().megatransfers()) <= 1) {
                return PASSES;
            }
        }
        return BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String has = module.kind().rate().map(rate -> "is rated " + rate).orElse("has an unknown rating");
        return Statement.of("%s %s; the document allows modules rated %s.".formatted(module, has, text(module)))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.RATES))
                .missing(MissingFact.RATE);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules are of a grade the document allows.")
                .by(situation.board().sourceOf(BoardFact.RATES));
    }

    private static String text(Placed module) {
        List<String> rates = new TreeSet<>(module.way().rates()).stream().map(Rate::toString).toList();
        return String.join(" or ", rates);
    }
}
