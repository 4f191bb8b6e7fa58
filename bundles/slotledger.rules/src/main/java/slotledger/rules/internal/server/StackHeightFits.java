package slotledger.rules.internal.server;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.kit.Stacks;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The chips of a module are stacked no higher than the board works with. */
@Component(service = MemoryRule.class)
@RuleId("stack-height")
public final class StackHeightFits extends ModuleRule {

    public StackHeightFits() {
        super(new RulePage(
                "stack-height",
                "A board works with chips of up to a certain number of stacked dies; many work with plain chips only.",
                Source.document("JEDEC JESD400-5", "die count of a package: 1, 2, 4, 8 or 16; what a board works with "
                        + "is a fact of its own document"),
                "Read the label: 2S2Rx4 means 2 package ranks of 2 dies stacked, 2S4Rx4 of 4, plain 2Rx4 has none "
                        + "stacked. A maker's table calls stacked modules 3DS.",
                "Choose a module of plain chips, or of fewer dies.",
                "A board works with plain chips only. A 128 GB DDR4 module 2Rx4 would need 128 x 8 / (2 x 16) = 32 "
                        + "Gbit a chip; dies end at 16 Gbit, so 2 or more are stacked and the board doesn't take it."));
    }

    @Override
    public Set<Generation> families() {
        return EnumSet.of(Generation.DDR4, Generation.DDR5);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().tallestStack().isEmpty()) {
            return Stacks.least(module.kind()) > 1 ? CAUTION : SILENT;
        }
        int tallest = module.way().tallestStack().getAsInt();
        if (Stacks.least(module.kind()) > tallest) {
            return BLOCKS;
        }
        return Stacks.most(module.kind()) <= tallest ? PASSES : UNKNOWN;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        if (weight == Weight.CAUTION) {
            return Statement.of(("%s has %d dies or more stacked in a chip; no document says that the board works with "
                            + "them.").formatted(module, Stacks.least(module.kind())))
                    .in(module)
                    .by(situation.board().sourceOf(BoardFact.STACK))
                    .advising("Look for 3DS in the board's manual and add \"tallest-stack\" to its board file before "
                            + "you buy.");
        }
        int tallest = module.way().tallestStack().orElseThrow();
        String board = tallest == 1 ? "the board works with plain chips only"
                : "the board works with up to %d stacked dies".formatted(tallest);
        int least = Stacks.least(module.kind());
        Statement statement = Statement.of(weight == Weight.BLOCKS
                        ? "%s has %s%d dies stacked in a chip; %s.".formatted(module,
                                module.kind().stack().isPresent() ? "" : "at least ", least, board)
                        : "It is not known whether the chips of %s are stacked; %s."
                                .formatted(module.inSentence(), board))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.STACK));
        return weight == Weight.UNKNOWN ? statement.missing(MissingFact.STACK) : statement;
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module has chips stacked higher than the board works with.")
                .by(situation.board().sourceOf(BoardFact.STACK));
    }
}
