package slotledger.rules.internal.kind;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.EccOutcome;
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

/** A module with or without check bits is one the board starts with. */
@Component(service = MemoryRule.class)
@RuleId("ecc")
public final class EccFits extends ModuleRule {

    public EccFits() {
        super(new RulePage(
                "ecc",
                "Whether a board uses, ignores or refuses ECC modules, or takes nothing else, is a fact of the board.",
                Source.document("Intel Desktop Board D845GBV memory page",
                        "\"ECC DIMMs should not be used ... could damage the board\""),
                "Count the chips: 9 or 18 alike on a rank mean ECC, 8 or 16 none. The label says E or R for ECC. What "
                        + "the board does with them stands in its manual under memory.",
                "Choose modules with or without ECC as the board's manual says.",
                "A board refuses ECC. An 8 GB module with 18 chips carries 72 bits instead of 64: it is not "
                        + "planned for "
                        + "this board, though it goes into the slot."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (ModuleFacts.isPageMode(module.way().generation())) {
            return SILENT;
        }
        Optional<Boolean> checkBits = ModuleFacts.checkBits(module.kind());
        boolean unknown = checkBits.isEmpty();
        boolean has = checkBits.orElse(false);
        return switch (module.way().ecc()) {
            case USED -> PASSES;
            case IGNORED -> has ? CAUTION : PASSES;
            case REFUSED -> unknown ? UNKNOWN : has ? BLOCKS : PASSES;
            case REQUIRED -> unknown ? UNKNOWN : has ? PASSES : BLOCKS;
            case UNKNOWN -> unknown || has ? UNKNOWN : PASSES;
        };
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        Optional<Boolean> checkBits = ModuleFacts.checkBits(module.kind());
        String carries = checkBits.map(has -> has ? "carries ECC" : "carries no ECC")
                .orElse("may or may not carry ECC");
        String board = switch (module.way().ecc()) {
            case USED, IGNORED, REFUSED, REQUIRED -> "the board " + module.way().ecc().text();
            case UNKNOWN -> "no document says what the board does with ECC modules";
        };
        return Statement.of("%s %s; %s.".formatted(module, carries, board))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.ECC))
                .missing(module.way().ecc() == EccOutcome.UNKNOWN ? MissingFact.BOARD_FACT : MissingFact.ERROR_CHECK);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("The board starts with these modules, as far as ECC is concerned.")
                .by(situation.board().sourceOf(BoardFact.ECC));
    }
}
