package slotledger.simm.internal;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.ErrorCheck;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A board that checks parity has parity modules in all sockets, or its checking turned off. */
@Component(service = MemoryRule.class)
@RuleId("simm-parity")
public final class ParityFits extends SimmModuleRule {

    public ParityFits() {
        super(new RulePage(
                "simm-parity",
                "Parity modules work in boards without parity; a board that checks parity starts with a module "
                        + "without it only after the checking is turned off.",
                Source.of(Ground.PRACTICE),
                "Count the chips of a SIMM: 9 or 3 mean parity on 30 pins, 8 or 2 none; on 72 pins x36 means parity, "
                        + "x32 none. The setup or a jumper says whether the board checks it.",
                "Turn parity off in the setup or by its jumper before the module goes in, or choose parity modules.",
                "A board checks parity and holds 4 x 1M x 9. 4 x 1M x 8 in bank 1 stop the start with a parity error, "
                        + "until parity is turned off for all 8 MB."));
    }

    @Override
    Optional<Weight> weighInPageMode(Placed module) {
        Optional<ErrorCheck> check = module.kind().errorCheck();
        boolean unknown = check.isEmpty();
        boolean plain = check.isPresent() && check.get() == ErrorCheck.NONE;
        boolean ecc = check.isPresent() && check.get() == ErrorCheck.ECC;
        return switch (module.way().ecc()) {
            case IGNORED -> PASSES;
            case USED -> unknown || ecc ? UNKNOWN : plain ? CAUTION : PASSES;
            case REQUIRED -> unknown || ecc ? UNKNOWN : plain ? BLOCKS : PASSES;
            case REFUSED -> unknown ? UNKNOWN : plain ? PASSES : BLOCKS;
            case UNKNOWN -> unknown || plain || ecc ? UNKNOWN : PASSES;
        };
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        Optional<ErrorCheck> check = module.kind().errorCheck();
        String has = check.map(known -> "has " + Parity.text(known)).orElse("may or may not have parity");
        boolean ecc = check.isPresent() && check.get() == ErrorCheck.ECC;
        String board = switch (module.way().ecc()) {
            case USED -> ecc ? "no document says whether the board takes ECC bits for parity"
                    : "the board checks parity and starts without it only when that is turned off";
            case REQUIRED -> ecc ? "no document says whether the board takes ECC bits for parity"
                    : "the board takes parity modules only";
            case REFUSED -> "the board takes modules without parity only";
            case IGNORED -> "the board has no parity";
            case UNKNOWN -> "no document says whether the board checks parity";
        };
        Statement statement = Statement.of("%s %s; %s.".formatted(module, has, board))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.ECC));
        return weight == Weight.UNKNOWN
                ? statement.missing(check.isEmpty() ? MissingFact.ERROR_CHECK : MissingFact.BOARD_FACT)
                : statement;
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("The board starts with these modules, as far as parity is concerned.")
                .by(situation.board().sourceOf(BoardFact.ECC));
    }
}
