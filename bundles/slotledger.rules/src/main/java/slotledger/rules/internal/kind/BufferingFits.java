package slotledger.rules.internal.kind;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
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

/** The buffering of a module is one the slot works with. */
@Component(service = MemoryRule.class)
@RuleId("buffering")
public final class BufferingFits extends ModuleRule {

    public BufferingFits() {
        super(new RulePage(
                "buffering",
                "A module is unbuffered, registered, load-reduced or fully buffered as the board works with.",
                Source.document("Intel Desktop Board D845GBV memory page", "\"Registered DIMMs are not supported\""),
                "Read the letter behind the rate on the label: U or E unbuffered, R registered, L load-reduced, F "
                        + "fully buffered. Without a label look at the middle of the module: a chip of other shape "
                        + "than the rest is a register. Modules without ECC and SO-DIMMs count as unbuffered.",
                "Choose a module of a buffering that the board works with.",
                "A desktop works with unbuffered modules. A 16 GB module labelled PC4-2400T-R is registered: the "
                        + "desktop "
                        + "does not start with it, though it goes into the slot."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().bufferings().isEmpty()) {
            return SILENT;
        }
        Optional<Buffering> buffering = ModuleFacts.buffering(module.kind());
        return buffering.isEmpty() ? UNKNOWN : module.way().bufferings().contains(buffering.get()) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String wanted = text(module);
        Optional<Buffering> buffering = ModuleFacts.buffering(module.kind());
        String sentence = buffering.isEmpty()
                ? "It is not known whether %s is %s, as the board needs.".formatted(module.inSentence(), wanted)
                : "%s is %s; the board works with %s modules.".formatted(module, buffering.get().text(), wanted);
        return Statement.of(sentence).in(module).by(situation.board().sourceOf(BoardFact.BUFFERING))
                .missing(MissingFact.BUFFERING);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules are of a buffering the board works with (%s)."
                        .formatted(text(situation.described().get(0))))
                .by(situation.board().sourceOf(BoardFact.BUFFERING));
    }

    private static String text(Placed module) {
        List<String> words = module.way().bufferings().stream().sorted().map(Buffering::text).toList();
        return String.join(" or ", words);
    }
}
