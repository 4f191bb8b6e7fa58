package slotledger.rules.internal.ddr4;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Buffering;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.chips.ChannelRanks;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.kit.Stacks;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Beyond eight logical ranks a DDR4 channel needs a document that says so. */
@Component(service = MemoryRule.class)
@RuleId("ddr4-eight-ranks")
public final class EightLogicalRanks extends Rule {

    private static final int CLASSIC = 8;

    public EightLogicalRanks() {
        super(new RulePage(
                "ddr4-eight-ranks",
                "A channel drives 8 ranks of registered modules, stacked dies counted, unless the board's document "
                        + "allows more; load-reduced modules are exempt.",
                Source.document(
                        "System x3630 M4 product guide, page 12 (DDR3)",
                        "eight ranks a channel, more with LRDIMMs; that DDR4 has the same limit is from memory"),
                "Add the ranks on the labels of a channel: 2Rx4 counts 2, 2S4Rx4 counts 2 x 4 = 8.",
                "Use modules of fewer ranks, or look in the board's manual for the ranks of a channel and add them "
                        + "to its board file.",
                "Three registered modules 2Rx4 in a channel make 6 ranks: within 8. Three of 4Rx4 make 12. A "
                        + "PowerEdge T630 holds three load-reduced modules 4Rx4 a channel: their buffers hide the 12 "
                        + "ranks."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR4);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        for (int i = 0; i < situation.board().channels().size(); i++) {
            int channel = i;
            int ranks = ranks(modules, channel);
            if (ranks > CLASSIC && ChannelRanks.driven(situation, channel) == ChannelRanks.UNSAID) {
                collector.report(Weight.UNKNOWN, () -> Statement.of(
                                ("Channel %s holds %d ranks of registered modules (%s); 8 is the classic limit, and "
                                        + "no document says what this channel drives.")
                                        .formatted(situation.board().channels().get(channel).name(), ranks,
                                                text(modules, channel)))
                        .in(Slots.labels(ofChannel(modules, channel)))
                        .missing(MissingFact.BOARD_FACT));
            }
        }
    }

    private static int ranks(List<Placed> modules, int channel) {
        int sum = 0;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.channel() == channel && !isLoadReduced(module)) {
                sum += Stacks.leastLogicalRanks(module.kind());
            }
        }
        return sum;
    }

    private static boolean isLoadReduced(Placed module) {
        return module.kind().buffering().isPresent() && module.kind().buffering().get() == Buffering.LOAD_REDUCED;
    }

    private static List<Placed> ofChannel(List<Placed> modules, int channel) {
        return modules.stream().filter(module -> module.channel() == channel).toList();
    }

    private static String text(List<Placed> modules, int channel) {
        return Slots.by(ofChannel(modules, channel),
                module -> Integer.toString(Stacks.leastLogicalRanks(module.kind())));
    }
}
