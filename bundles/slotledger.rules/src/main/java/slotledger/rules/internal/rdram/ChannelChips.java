package slotledger.rules.internal.rdram;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Channel;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A channel carries at most 32 RDRAM chips. */
@Component(service = MemoryRule.class)
@RuleId("rdram-channel-chips")
public final class ChannelChips extends RdramRule {

    public ChannelChips() {
        super(new RulePage(
                "rdram-channel-chips",
                "A channel carries at most 32 RDRAM chips, whatever their size.",
                Source.document("Abit CX6 manual", "memory: at most 32 RDRAM chips a channel"),
                "The label says how many chips a module has (512MB/16 means 16); else chips = capacity x 8 / chip "
                        + "size. A 232-pin RIMM has half of its chips on each channel.",
                "Use modules of the same size with fewer and larger chips, or fewer modules.",
                "2 channels with 2 sockets each take 4 RIMMs of 16 chips: 2 x 16 = 32 chips a channel, which is the "
                        + "limit. With chips of 256 Mbit that makes 4 x 512 MB = 2 GB. A third such RIMM in a channel "
                        + "would make 48 chips."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Channel> channels = situation.board().channels();
        boolean passed = false;
        boolean objected = false;
        for (int channel = 0; channel < channels.size(); channel++) {
            int fewest = 0;
            int most = 0;
            List<Placed> modules = situation.described();
            for (int i = 0; i < modules.size(); i++) {
                Placed module = modules.get(i);
                if (module.channel() == channel) {
                    OptionalInt chips = RdramChips.of(module.kind());
                    fewest += chips.isPresent() ? chips.getAsInt() : RdramChips.fewestPossible(module.kind());
                    most += chips.isPresent() ? chips.getAsInt() : RdramChips.mostPossible(module.kind());
                }
            }
            int limit = RdramChips.MOST_OF_CHANNEL * channels.get(channel).spans();
            if (fewest > limit || most > limit) {
                objected = true;
                Weight weight = fewest > limit ? Weight.BLOCKS : Weight.UNKNOWN;
                int index = channel;
                int least = fewest;
                collector.report(weight, () -> objection(situation, channels.get(index), index, least, weight));
            } else if (most > 0) {
                passed = true;
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("No channel carries more than %d chips.".formatted(
                    RdramChips.MOST_OF_CHANNEL)));
        }
    }

    private static Statement objection(Situation situation, Channel channel, int index, int fewest, Weight weight) {
        List<String> labels = new ArrayList<>();
        situation.described().stream().filter(module -> module.channel() == index)
                .forEach(module -> labels.add(module.label()));
        int each = (fewest + channel.spans() - 1) / channel.spans();
        return weight == Weight.BLOCKS
                ? Statement.of("The modules in channel %s have %d chips%s; a channel carries at most %d.".formatted(
                        channel.name(), each, channel.spans() > 1 ? " on each memory channel" : "",
                        RdramChips.MOST_OF_CHANNEL)).in(labels)
                : Statement.of("It is not known how many chips the modules in channel %s have; a channel carries at "
                        .formatted(channel.name()) + "most %d.".formatted(RdramChips.MOST_OF_CHANNEL))
                        .in(labels).missing(MissingFact.CHIP_SIZE);
    }
}
