package slotledger.rules.internal.server;

import java.util.ArrayList;
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
        for (int i = 0; i < modules.size(); i++) {
            Placed first = modules.get(i);
            if (first.way().channelRanks().isEmpty() || !isFirstOfChannel(modules, i)) {
                continue;
            }
            int drives = first.way().channelRanks().getAsInt();
            int packages = 0;
            int least = 0;
            int most = 0;
            for (int j = i; j < modules.size(); j++) {
                Placed module = modules.get(j);
                if (module.channel() == first.channel()) {
                    int ranks = ModuleFacts.ranks(module.kind()).orElse(1);
                    packages += ranks;
                    least += Stacks.leastLogicalRanks(module.kind());
                    most += ranks * Stacks.most(module.kind());
                }
            }
            report(situation, collector, first, drives, packages, least, most);
        }
    }

    private static void report(
            Situation situation, Collector collector, Placed first, int drives, int packages, int least, int most) {
        if (packages > drives || most == packages) {
            return;
        }
        if (least > drives) {
            collector.report(Weight.BLOCKS, () -> statement(situation, first,
                    "The modules of channel %s have %d logical ranks (%s); the channel drives %d."
                            .formatted(first.slot().channel(), least, text(situation, first), drives)));
        } else if (most > drives) {
            collector.report(Weight.UNKNOWN, () -> statement(situation, first,
                    ("The modules of channel %s have %d to %d logical ranks, as it is not known how many dies are "
                            + "stacked; the channel drives %d.")
                            .formatted(first.slot().channel(), least, most, drives))
                    .missing(MissingFact.STACK));
        } else {
            collector.report(Weight.PASSES, () -> statement(situation, first,
                    "The modules of channel %s have %d logical ranks (%s); the channel drives %d."
                            .formatted(first.slot().channel(), most, text(situation, first), drives)));
        }
    }

    private static String text(Situation situation, Placed first) {
        return Slots.by(ofChannel(situation, first), module -> {
            int ranks = ModuleFacts.ranks(module.kind()).orElse(1);
            int dies = Stacks.least(module.kind());
            return dies == 1 ? Integer.toString(ranks) : "%d x %d = %d".formatted(ranks, dies, ranks * dies);
        });
    }

    private static Statement statement(Situation situation, Placed first, String sentence) {
        return Statement.of(sentence)
                .in(Slots.labels(ofChannel(situation, first)))
                .by(situation.board().sourceOf(BoardFact.RANKS));
    }

    private static List<Placed> ofChannel(Situation situation, Placed first) {
        List<Placed> found = new ArrayList<>();
        for (Placed module : situation.described()) {
            if (module.channel() == first.channel()) {
                found.add(module);
            }
        }
        return found;
    }

    private static boolean isFirstOfChannel(List<Placed> modules, int index) {
        for (int i = 0; i < index; i++) {
            if (modules.get(i).channel() == modules.get(index).channel()) {
                return false;
            }
        }
        return true;
    }
}
