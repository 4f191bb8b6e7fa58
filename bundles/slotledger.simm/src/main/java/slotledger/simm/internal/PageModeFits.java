package slotledger.simm.internal;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A module is FPM or EDO as the board takes it. */
@Component(service = MemoryRule.class)
@RuleId("simm-page-mode")
public final class PageModeFits extends SimmModuleRule {

    public PageModeFits() {
        super(new RulePage(
                "simm-page-mode",
                "FPM goes where FPM is taken and EDO where EDO is; EDO in a board that only knows FPM may fail.",
                Source.of(Ground.PRACTICE),
                SimmRule.TELL_FPM_FROM_EDO,
                "Choose modules of the kind that the board's document names. Where it takes both, write both into the "
                        + "board file.",
                "A 486 board of 1994 takes FPM. 2 modules of 16 MB EDO at 60 ns go in, and the machine may start, "
                        + "count half, or show errors."));
    }

    @Override
    Optional<Weight> weighInPageMode(Placed module) {
        Optional<Generation> generation = module.kind().generation();
        if (generation.isEmpty()) {
            return UNKNOWN;
        }
        if (generation.get() == module.way().generation()) {
            return PASSES;
        }
        return ModuleFacts.isPageMode(generation.get()) && ModuleFacts.isPageMode(module.way().generation())
                ? UNKNOWN
                : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String wanted = module.way().generation().text();
        if (weight == Weight.UNKNOWN && isNamedElsewhere(module, situation)) {
            // Concerns every module: those that stay are no evidence once others come beside them.
            return Statement.of("%s is %s beside %s; the document takes either, but doesn't say that they may be mixed."
                            .formatted(module, module.kind().generation().orElseThrow().text(), wanted))
                    .in(situation.filled())
                    .by(situation.board().sourceOf(BoardFact.TAKES))
                    .missing(MissingFact.BOARD_FACT);
        }
        Statement statement = Statement.of(sentence(module, weight, wanted))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.TAKES));
        if (weight != Weight.UNKNOWN) {
            return statement;
        }
        return module.kind().generation().isEmpty()
                ? statement.missing(MissingFact.GENERATION).advising(SimmRule.TELL_FPM_FROM_EDO)
                : statement.missing(MissingFact.BOARD_FACT);
    }

    private static boolean isNamedElsewhere(Placed module, Situation situation) {
        return situation.board().takes().stream().anyMatch(way -> way.holdsFor(module.label())
                && module.kind().generation().filter(each -> each == way.generation()).isPresent());
    }

    private static String sentence(Placed module, Weight weight, String wanted) {
        if (module.kind().generation().isEmpty()) {
            return "%s may be FPM or EDO; the slot takes %s.".formatted(module, wanted);
        }
        String has = module.kind().generation().get().text();
        return weight == Weight.UNKNOWN
                ? "%s is %s; the document names %s only. It has the same notches and goes in, but may fail."
                        .formatted(module, has, wanted)
                : "%s is %s; the slot takes %s.".formatted(module, has, wanted);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules are FPM or EDO as the slots take.")
                .by(situation.board().sourceOf(BoardFact.TAKES));
    }
}
