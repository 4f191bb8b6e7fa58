package slotledger.rules.internal.server;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.chips.ChannelRanks;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.kit.Stacks;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Stacked chips count with all their dies where a channel's ranks are limited. */
@Component(service = MemoryRule.class)
@RuleId("logical-ranks")
public final class LogicalRanksFit extends Rule {

    public LogicalRanksFit() {
        super(new RulePage(
                "logical-ranks",
                "Where a channel drives a certain number of ranks, a module of stacked chips counts with package "
                        + "ranks x dies: its logical ranks.",
                Source.document(
                        "JEDEC JESD21-C 4.1.2.12 and JESD400-5",
                        "logical ranks = package ranks x dies of a stack"),
                "Read the label: 2S4Rx4 means 2 package ranks of 4 dies each, 8 logical ranks. Makers' tables print "
                        + "the logical number, such as 8R for 256 GB.",
                "Take a module out of the channel, or use modules of fewer dies or ranks.",
                "A channel drives 8 ranks. Two modules 2S2Rx4 have 2 x 2 = 4 logical ranks each, 8 together: allowed. "
                        + "Two of 2S4Rx4 have 2 x 8 = 16: not allowed, though each has only 2 package ranks."));
    }

    @Override
    public Set<Generation> families() {
        return EnumSet.of(Generation.DDR4, Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        for (int channel = 0; channel < situation.board().channels().size(); channel++) {
            int driven = ChannelRanks.driven(situation, channel);
            if (driven == ChannelRanks.UNSAID) {
                continue;
            }
            int packages = 0;
            int least = 0;
            int most = 0;
            for (int i = 0; i < modules.size(); i++) {
                Placed module = modules.get(i);
                if (module.channel() == channel) {
                    int ranks = ModuleFacts.ranks(module.kind()).orElse(1);
                    packages += ranks;
                    least += ChannelRanks.mayBeHidden(module) ? 1 : Stacks.leastLogicalRanks(module.kind());
                    most += ranks * Stacks.most(module.kind());
                }
            }
            report(situation, collector, channel, driven, packages, least, most);
        }
    }

    private static void report(
            Situation situation, Collector collector, int channel, int driven, int packages, int least, int most) {
        if (packages > driven || most == packages) {
            return;
        }
        if (least > driven) {
            collector.report(Weight.BLOCKS, () -> counted(situation, channel, least, driven));
        } else if (most > driven) {
            collector.report(Weight.UNKNOWN, () -> statement(situation, channel,
                    ("The modules of channel %s have %d to %d logical ranks, as it is not known how many dies are "
                            + "stacked or hidden; the channel drives %d.")
                            .formatted(name(situation, channel), least, most, driven))
                    .missing(MissingFact.STACK));
        } else {
            collector.report(Weight.PASSES, () -> counted(situation, channel, most, driven));
        }
    }

    private static Statement counted(Situation situation, int channel, int ranks, int driven) {
        String each = Slots.by(ofChannel(situation, channel), module -> {
            int own = ModuleFacts.ranks(module.kind()).orElse(1);
            int dies = Stacks.least(module.kind());
            return dies == 1 ? Integer.toString(own) : "%d x %d = %d".formatted(own, dies, own * dies);
        });
        return statement(situation, channel,
                "The modules of channel %s have %d logical ranks (%s); the channel drives %d."
                        .formatted(name(situation, channel), ranks, each, driven));
    }

    private static String name(Situation situation, int channel) {
        return situation.board().channels().get(channel).name();
    }

    private static Statement statement(Situation situation, int channel, String sentence) {
        return Statement.of(sentence)
                .in(Slots.labels(ofChannel(situation, channel)))
                .by(situation.board().sourceOf(BoardFact.RANKS));
    }

    private static List<Placed> ofChannel(Situation situation, int channel) {
        return situation.described().stream().filter(module -> module.channel() == channel).toList();
    }
}
