package slotledger.rules.internal.chips;

import java.util.List;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
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

/** The modules of a channel have no more ranks together than the channel drives. */
@Component(service = MemoryRule.class)
@RuleId("channel-ranks")
public final class ChannelRanksFit extends Rule {

    public ChannelRanksFit() {
        super(new RulePage(
                "channel-ranks",
                "A channel drives up to a certain number of ranks, all its modules together.",
                Source.document(
                        "PowerEdge M620 Owner's Manual, page 32; System x3630 M4 product guide, page 12",
                        "two quad-rank modules a channel, or three of one or two ranks; eight ranks a channel"),
                "Read the organisation on the labels of all modules of the channel and add the ranks: 2Rx4 and 1Rx4 "
                        + "make 3.",
                "Take a module out of the channel, or use modules with fewer ranks.",
                "A channel drives 8 ranks. Two modules 4Rx4 make 8 and are allowed; a third module of one rank "
                        + "makes 9 and is not."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        boolean passed = false;
        boolean objected = false;
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            Placed first = modules.get(i);
            if (first.way().channelRanks().isEmpty() || !isFirst(modules, i)) {
                continue;
            }
            int most = first.way().channelRanks().getAsInt();
            int least = sum(modules, first.channel(), false);
            int possible = sum(modules, first.channel(), true);
            if (least > most) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> statement(situation, first,
                        "The modules of channel %s have %d ranks together; the channel drives %d."
                                .formatted(first.slot().channel(), least, most)));
            } else if (possible > most) {
                objected = true;
                collector.report(Weight.UNKNOWN, () -> statement(situation, first,
                        ("The modules of channel %s have %d to %d ranks together, not all are known; the channel "
                                + "drives %d.")
                                .formatted(first.slot().channel(), least, possible, most)));
            } else {
                passed = true;
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("No channel has more ranks than it drives.")
                    .by(situation.board().sourceOf(BoardFact.RANKS)));
        }
    }

    private static boolean isFirst(List<Placed> modules, int index) {
        for (int i = 0; i < index; i++) {
            if (modules.get(i).channel() == modules.get(index).channel()) {
                return false;
            }
        }
        return true;
    }

    private static int sum(List<Placed> modules, int channel, boolean most) {
        int sum = 0;
        for (Placed module : modules) {
            if (module.channel() == channel) {
                OptionalInt ranks = ModuleFacts.ranks(module.kind());
                sum += ranks.isPresent() ? ranks.getAsInt() : most ? ModuleFacts.mostRanks(module.kind()) : 1;
            }
        }
        return sum;
    }

    private static Statement statement(Situation situation, Placed first, String sentence) {
        List<String> labels = situation.inChannel(first.channel()).stream().map(Placed::label).toList();
        return Statement.of(sentence)
                .in(labels)
                .by(situation.board().sourceOf(BoardFact.RANKS))
                .missing(MissingFact.RANKS);
    }
}
