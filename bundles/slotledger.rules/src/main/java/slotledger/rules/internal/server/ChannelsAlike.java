package slotledger.rules.internal.server;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardForm;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The channels of a server hold the same modules. */
@Component(service = MemoryRule.class)
@RuleId("server-channels")
public final class ChannelsAlike extends Rule {

    public ChannelsAlike() {
        super(new RulePage(
                "server-channels",
                "On a server every channel of a processor best holds modules of the same capacities.",
                Source.document(
                        "PowerEdge C6520 Installation and Service Manual",
                        "memory module guidelines: populate channels identically with equal modules"),
                "Write down the modules of each channel by size; the board's map says which slot belongs to which "
                        + "channel.",
                "Spread the modules so that every channel holds the same capacities.",
                "Channel 1 holds 16 GB, channel 2 holds 8 + 8 GB: the totals are equal, but the channels carry "
                        + "different loads."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.board().form() != BoardForm.SERVER || situation.hasUnread()) {
            return;
        }
        long[] sums = new long[situation.board().channels().size()];
        int[] counts = new int[sums.length];
        for (Placed module : situation.described()) {
            sums[module.channel()] += module.kind().capacity().kibibytes();
            counts[module.channel()]++;
        }
        for (int i = 0; i < sums.length; i++) {
            for (int j = 0; j < i; j++) {
                if (sums[i] > 0 && sums[i] == sums[j] && counts[i] != counts[j]
                        && processor(situation, i) == processor(situation, j)) {
                    String one = situation.board().channels().get(j).name();
                    String other = situation.board().channels().get(i).name();
                    int first = counts[j];
                    int second = counts[i];
                    collector.report(Weight.CAUTION, () -> Statement.of(
                            "Channels %s and %s hold the same total in %d and %d modules."
                                    .formatted(one, other, first, second)));
                    return;
                }
            }
        }
    }

    private static int processor(Situation situation, int channel) {
        return situation.board().channels().get(channel).processor();
    }
}
