package slotledger.rules.internal.fill;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Interleave;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.operation.Split;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The channels of a processor hold equal totals. */
@Component(service = MemoryRule.class)
@RuleId("channels")
public final class ChannelsEqual extends Rule {

    public ChannelsEqual() {
        super(new RulePage(
                "channels",
                "Channels that hold equal totals run together; what one holds more runs alone, or nothing runs "
                        + "together.",
                Source.document(
                        "HP Hardware Reference Guide 8FJ83EA",
                        "\"the channel populated with the least amount of memory describes the total amount of "
                                + "memory assigned to dual channel\""),
                "Add up the capacities of each channel, soldered memory too; the board's map says which slot belongs "
                        + "to which channel. The colours of sockets differ in meaning from maker to maker.",
                "Spread the modules so that all channels hold the same total.",
                "Channel A holds 8 GB, channel B 4 GB: twice 4 GB = 8 GB run in dual channel and 4 GB alone. Two "
                        + "modules of 4 GB in B would make all 16 GB dual."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Interleave interleave = situation.board().interleave();
        if (interleave == Interleave.NONE || situation.hasUnread() || situation.board().channels().size() == 1) {
            return;
        }
        for (int processor = 1; processor <= situation.setup().processors(); processor++) {
            Split split = Split.of(situation, processor);
            if (split.all() < 2 || split.names().isEmpty()) {
                continue;
            }
            boolean all = split.names().size() == split.all();
            boolean holds = all && split.isEqual();
            int number = processor;
            Weight weight = holds ? Weight.PASSES : Weight.LOWERS;
            collector.report(weight, () -> Statement.of(sentence(split, number, situation))
                    .by(situation.board().sourceOf(split.isEqual() ? BoardFact.CHANNELS : BoardFact.INTERLEAVE)));
        }
    }

    private static String sentence(Split split, int processor, Situation situation) {
        String who = situation.setup().processors() == 1 ? "" : "Processor %d: ".formatted(processor);
        String doubt = situation.board().interleave() == Interleave.UNKNOWN && !split.isEqual()
                ? " (no document says that unequal channels run together)"
                : "";
        String mode = split.mode().toString();
        return split.names().size() == split.all()
                ? "%sThe channels hold %s: %s%s.".formatted(who, split.text(), mode, doubt)
                : "%s%d of %d channels filled (%s): %s%s."
                        .formatted(who, split.names().size(), split.all(), split.text(), mode, doubt);
    }
}
