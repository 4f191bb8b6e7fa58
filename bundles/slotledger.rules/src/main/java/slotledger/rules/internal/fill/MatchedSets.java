package slotledger.rules.internal.fill;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Modules come in sets of identical ones. */
@Component(service = MemoryRule.class)
@RuleId("matched-sets")
public final class MatchedSets extends Rule {

    public MatchedSets() {
        super(new RulePage(
                "matched-sets",
                "Where a board takes modules in sets, each set is whole and its modules are alike.",
                Source.document("System x3250 M5 Installation and Service Guide", "Table 8: pairs of connectors"),
                "The manual says pairs, threes or fours. Compare capacity, rating, ranks, chip width, ECC and "
                        + "buffering on the labels.",
                "Complete the set with a module like the others, or take the odd module out.",
                "A server takes pairs in 1 and 3, then 2 and 4. 4 GB in 1 and 3 with 8 GB in 2 and 4 are two pairs; "
                        + "4 GB and 8 GB in 1 and 3 are none."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        int size = situation.board().fill().setSize();
        List<String> filled = situation.filled();
        if (size == 1 || filled.isEmpty() || situation.hasUnread() || FillFacts.hasRedundancySets(situation)) {
            return;
        }
        Weight broken = departure(situation.board().fill().binding());
        boolean printed = !situation.matchingRows().isEmpty();
        if (filled.size() % size != 0 && !printed) {
            collector.report(broken, () -> statement(situation,
                    "%s: no whole number of sets of %d.".formatted(FillFacts.modules(filled.size()), size)));
            return;
        }
        List<String> sequence = FillFacts.sequence(situation);
        boolean alike = sequence.isEmpty() ? countsAreWhole(situation, size) : setsAreAlike(situation, sequence, size);
        collector.report(alike ? Weight.PASSES : broken, () -> statement(situation, alike
                ? "The modules come in sets of %d alike.".formatted(size)
                : "The modules of a set of %d are not alike.".formatted(size)));
    }

    private static boolean setsAreAlike(Situation situation, List<String> sequence, int size) {
        for (int i = 0; i + size <= sequence.size(); i += size) {
            if (!FillFacts.areAlike(situation, sequence.subList(i, i + size))) {
                return false;
            }
        }
        return true;
    }

    /** Where no order says which sockets make a set: of every kind there must be whole sets. */
    private static boolean countsAreWhole(Situation situation, int size) {
        List<Placed> modules = situation.modules();
        for (Placed one : modules) {
            int alike = 0;
            for (Placed other : modules) {
                alike += !other.isSoldered() && ModuleFacts.areAlike(one.kind(), other.kind()) ? 1 : 0;
            }
            if (!one.isSoldered() && alike % size != 0) {
                return false;
            }
        }
        return true;
    }

    private static Statement statement(Situation situation, String sentence) {
        return Statement.of(sentence).in(situation.filled()).by(situation.board().sourceOf(BoardFact.FILL));
    }
}
