package slotledger.rules.internal.chips;

import java.util.Optional;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A module has no more ranks than the board works with. */
@Component(service = MemoryRule.class)
@RuleId("module-ranks")
public final class ModuleRanksFit extends ModuleRule {

    public ModuleRanksFit() {
        super(new RulePage(
                "module-ranks",
                "A board works with modules of up to a certain number of ranks.",
                Source.document(
                        "PowerEdge T640 Installation and Service Manual",
                        "Table 2: RDIMM dual or single rank, LRDIMM quad or octo rank"),
                "Read the organisation on the label: 2Rx8 means two ranks, 4Rx4 four.",
                "Choose a module with fewer ranks.",
                "A board works with modules of up to 2 ranks. A 16 GB module 4Rx8 is not allowed, one of 2Rx8 is."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().moduleRanks().isEmpty()) {
            return SILENT;
        }
        int most = module.way().moduleRanks().getAsInt();
        OptionalInt ranks = ModuleFacts.ranks(module.kind());
        if (ranks.isPresent()) {
            return ranks.getAsInt() <= most ? PASSES : BLOCKS;
        }
        return ModuleFacts.mostRanks(module.kind()) <= most ? PASSES : UNKNOWN;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        OptionalInt ranks = ModuleFacts.ranks(module.kind());
        String has = ranks.isPresent() ? "has " + ranks.getAsInt() + " ranks" : "has an unknown number of ranks";
        return Statement.of("%s %s; the board works with modules of up to %d."
                        .formatted(module, has, module.way().moduleRanks().getAsInt()))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.RANKS))
                .missing(MissingFact.RANKS);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module has more ranks than the board works with.")
                .by(situation.board().sourceOf(BoardFact.RANKS));
    }
}
