package slotledger.rules.internal.fill;

import java.util.List;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Binding;
import slotledger.model.board.BoardFact;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Modules with more ranks are in the sockets that come first. */
@Component(service = MemoryRule.class)
@RuleId("ranks-first")
public final class RanksFirst extends Rule {

    public RanksFirst() {
        super(new RulePage(
                "ranks-first",
                "Modules with more ranks go into the sockets that come first in the order.",
                Source.document(
                        "Precision Rack 7910 Owner's Manual",
                        "page 21, general memory module installation guidelines: highest rank count in the white "
                                + "sockets first"),
                "Compare the ranks on the labels in the order of the sockets: 4Rx4 has four, 2Rx8 two.",
                "Exchange the modules so that none with fewer ranks comes before one with more.",
                "The order is A1, A5 of one channel. With 4Rx4 in A1 and 2Rx4 in A5 the rule holds; with 2Rx4 in A1 "
                        + "and 4Rx4 in A5 it does not."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!situation.board().fill().ranksFirst() || situation.filled().size() < 2 || situation.hasUnread()) {
            return;
        }
        List<String> sequence = FillFacts.sequence(situation);
        boolean open = false;
        for (int i = 1; i < sequence.size(); i++) {
            String before = sequence.get(i - 1);
            String after = sequence.get(i);
            OptionalInt first = ranks(situation.setup().population(), before);
            OptionalInt second = ranks(situation.setup().population(), after);
            open |= first.isEmpty() || second.isEmpty();
            if (first.isPresent() && second.isPresent() && first.getAsInt() < second.getAsInt()) {
                collector.report(departure(situation.board().fill().binding()), () -> Statement.of(
                                "%d ranks in slot %s come after %d in slot %s; the module with more ranks goes first."
                                        .formatted(second.getAsInt(), after, first.getAsInt(), before))
                        .in(List.of(before, after))
                        .by(situation.board().sourceOf(BoardFact.FILL)));
                return;
            }
        }
        if (open) {
            boolean required = situation.board().fill().binding() == Binding.REQUIRED;
            collector.report(required ? Weight.UNKNOWN : Weight.CAUTION, () -> Statement.of(
                            "The ranks of some modules are not known; those with more ranks go first.")
                    .in(sequence)
                    .by(situation.board().sourceOf(BoardFact.FILL))
                    .missing(MissingFact.RANKS));
        } else if (!sequence.isEmpty()) {
            collector.report(Weight.PASSES, () -> Statement.of("No module with fewer ranks comes before one with more.")
                    .by(situation.board().sourceOf(BoardFact.FILL)));
        }
    }

    private static OptionalInt ranks(Population population, String label) {
        ModuleKind kind = population.in(label).module().orElseThrow();
        return ModuleFacts.ranks(kind);
    }
}
