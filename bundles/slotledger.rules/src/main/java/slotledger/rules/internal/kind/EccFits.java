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
                "Count the chips of a rank: 9 x8 chips or 18 x4 chips mean ECC, 8 or 16 none; on DDR5 10 x8, 18 or 20 "
                        + "x4 mean ECC. On a SIMM x9 and x36 mean parity, x8 and x32 none. The label says E or R for "
                        + "ECC. What the board does with it stands in its manual under memory.",
                "Choose modules with or without ECC as the board's manual says.",
                "A board refuses ECC. An 8 GB module of 18 chips x8 on two ranks carries 2 x 9 x 8 = 2 x 72 bits "
                        + "instead of 2 x 64: it is not planned for this board, though it goes into the slot."));
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
