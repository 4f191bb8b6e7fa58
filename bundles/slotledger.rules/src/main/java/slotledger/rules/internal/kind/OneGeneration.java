package slotledger.rules.internal.kind;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** On a board with sockets of two generations only one generation is used at a time. */
@Component(service = MemoryRule.class)
@RuleId("one-generation")
public final class OneGeneration extends Rule {

    public OneGeneration() {
        super(new RulePage(
                "one-generation",
                "A board with sockets of two generations runs one of them at a time.",
                Source.document(
                        "Intel support article 000088926",
                        "never mix DDR4 and DDR5; that older boards with two kinds of sockets run one of them is "
                                + "common practice"),
                "Look at the labels of all modules, and at the keys of the sockets: those of two generations lie at "
                        + "different places.",
                "Take out the modules of one generation.",
                "A board has two DDR2 and two DDR3 sockets. 2 x 2 GB DDR2 run, 2 x 2 GB DDR3 run, one of each does "
                        + "not."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.generations().size() < 2) {
            return;
        }
        Placed first = null;
        for (Placed module : situation.described()) {
            if (first == null) {
                first = module;
            } else if (module.way().generation() != first.way().generation()) {
                Generation one = first.way().generation();
                Generation other = module.way().generation();
                boolean older = ModuleFacts.isPageMode(one) || ModuleFacts.isPageMode(other);
                if (ModuleFacts.isPageMode(one) && ModuleFacts.isPageMode(other)) {
                    continue;
                }
                collector.report(older ? Weight.UNKNOWN : Weight.BLOCKS, () -> Statement.of(
                                ("Sockets for %s and sockets for %s are filled at once; " + (older
                                        ? "many boards run only one of the two, and no document says what this one "
                                                + "does."
                                        : "the board runs one of the two.")).formatted(one.text(), other.text()))
                        .in(situation.filled())
                        .by(situation.board().sourceOf(BoardFact.TAKES))
                        .missing(MissingFact.BOARD_FACT));
                return;
            }
        }
    }
}
