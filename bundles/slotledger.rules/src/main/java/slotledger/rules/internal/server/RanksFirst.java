package slotledger.rules.internal.server;

import java.util.List;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
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
                "Where the document asks for it, modules with more ranks go into the sockets that come first.",
                Source.document(
                        "Precision Rack 7910 Owner's Manual",
                        "general memory module installation guidelines: highest rank count in the white sockets first"),
                "Read the ranks on the labels in the order of the sockets: 2Rx4 has 2, 1Rx4 has 1.",
                "Exchange the modules so that none with fewer ranks comes before one with more.",
                "The order is A1, A5. With 2Rx4 in A1 and 1Rx4 in A5 the rule holds; the other way round the far end "
                        + "of the channel carries 1 rank and the near one 2, and the machine may not start."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!situation.board().fill().ranksFirst() || situation.filled().size() < 2 || situation.hasUnread()) {
            return;
        }
        List<String> sequence = FillFacts.sequence(situation);
        boolean known = true;
        for (int i = 1; i < sequence.size(); i++) {
            ModuleKind before = kind(situation, sequence.get(i - 1));
            ModuleKind after = kind(situation, sequence.get(i));
            OptionalInt first = ModuleFacts.ranks(before);
            OptionalInt second = ModuleFacts.ranks(after);
            if (first.isEmpty() || second.isEmpty()) {
                known &= before.equals(after);
            } else if (second.getAsInt() > first.getAsInt()) {
                int at = i;
                collector.report(departure(situation.board().fill().binding()), () -> Statement.of(
                                "The module in slot %s has %s, that before it in slot %s %d; more ranks go first."
                                        .formatted(sequence.get(at), ranks(second.getAsInt()), sequence.get(at - 1),
                                                first.getAsInt()))
                        .in(List.of(sequence.get(at - 1), sequence.get(at)))
                        .by(situation.board().sourceOf(BoardFact.FILL)));
                return;
            }
        }
        boolean all = known;
        if (!sequence.isEmpty()) {
            collector.report(all ? Weight.PASSES : Weight.UNKNOWN, () -> all
                    ? Statement.of("No module with fewer ranks comes before one with more.")
                            .by(situation.board().sourceOf(BoardFact.FILL))
                    : Statement.of("The ranks of the modules are not all known, and those with more go first.")
                            .in(sequence)
                            .by(situation.board().sourceOf(BoardFact.FILL))
                            .missing(MissingFact.RANKS));
        }
    }

    private static String ranks(int count) {
        return count == 1 ? "1 rank" : count + " ranks";
    }

    private static ModuleKind kind(Situation situation, String label) {
        return situation.setup().population().in(label).module().orElseThrow();
    }
}
