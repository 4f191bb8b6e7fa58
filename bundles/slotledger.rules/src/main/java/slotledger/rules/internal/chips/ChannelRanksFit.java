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
import slotledger.rules.kit.Slots;
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
                "A channel drives up to a certain number of ranks, all its modules together; the buffer of a "
                        + "load-reduced module hides some.",
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
        for (int i = 0; i < situation.board().channels().size(); i++) {
            int channel = i;
            int driven = ChannelRanks.driven(situation, channel);
            if (driven == ChannelRanks.UNSAID) {
                continue;
            }
            int least = sum(situation, channel, false);
            int possible = sum(situation, channel, true);
            if (least > driven) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> statement(situation, channel,
                        "The modules of channel %s have %d ranks together; the channel drives %d."
                                .formatted(name(situation, channel), least, driven)));
            } else if (possible > driven) {
                objected = true;
                collector.report(Weight.UNKNOWN, () -> unknown(situation, channel, least, possible, driven));
            } else {
                passed = true;
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("No channel has more ranks than it drives.")
                    .by(situation.board().sourceOf(BoardFact.RANKS)));
        }
    }

    private static int sum(Situation situation, int channel, boolean most) {
        int sum = 0;
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.channel() == channel) {
                OptionalInt ranks = ModuleFacts.ranks(module.kind());
                boolean open = ranks.isEmpty() || ChannelRanks.mayBeHidden(module);
                sum += open && !most ? 1 : ranks.isPresent() ? ranks.getAsInt() : ModuleFacts.mostRanks(module.kind());
            }
        }
        return sum;
    }

    private static Statement unknown(Situation situation, int channel, int least, int possible, int driven) {
        boolean hidden = situation.inChannel(channel).stream()
                .anyMatch(module -> module.takes().isPresent() && ChannelRanks.mayBeHidden(module));
        return statement(situation, channel, hidden
                        ? ("The modules of channel %s have %d ranks together; the channel drives %d, and no document "
                                + "says how many a load-reduced module shows it.")
                                .formatted(name(situation, channel), possible, driven)
                        : ("The modules of channel %s have %d to %d ranks together, not all are known; the channel "
                                + "drives %d.").formatted(name(situation, channel), least, possible, driven))
                .missing(hidden ? MissingFact.BOARD_FACT : MissingFact.RANKS);
    }

    private static String name(Situation situation, int channel) {
        return situation.board().channels().get(channel).name();
    }

    private static Statement statement(Situation situation, int channel, String sentence) {
        return Statement.of(sentence)
                .in(Slots.labels(situation.inChannel(channel)))
                .by(situation.board().sourceOf(BoardFact.RANKS));
    }
}
