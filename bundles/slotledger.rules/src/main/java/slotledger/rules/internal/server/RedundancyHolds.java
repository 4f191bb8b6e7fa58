package slotledger.rules.internal.server;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Channel;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.RedundancyTerms.FillSet;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.capacity.Counting;
import slotledger.rules.kit.FillFacts;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A machine that keeps memory back against errors is filled as its board asks for then. */
@Component(service = MemoryRule.class)
@RuleId("redundancy")
public final class RedundancyHolds extends Rule {

    public RedundancyHolds() {
        super(new RulePage(
                "redundancy",
                "A machine that mirrors memory or keeps ranks spare is filled in the sets its document prints for "
                        + "that, and has less usable memory than installed.",
                Source.document("System x3550 M5 Installation and Service Guide", "Table 28: mirrored channels"),
                "The firmware's setup says independent, mirrored or spare; the manual has a table for each.",
                "Fill the printed sets with modules alike, or set the machine to independent memory.",
                "A server with one processor mirrors memory: sockets 1 and 4 are filled together, then 9 and 12. 2 x "
                        + "16 GB in 1 and 4 are 32 GB, of which 16 GB are usable; in 1 and 9 they mirror nothing."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Redundancy redundancy = situation.setup().redundancy();
        if (redundancy == Redundancy.NONE || situation.modules().isEmpty()) {
            return;
        }
        Optional<RedundancyTerms> known = situation.board().terms(redundancy);
        if (known.isEmpty()) {
            report(situation, collector, Weight.UNKNOWN, MissingFact.BOARD_FACT, List.of(), () ->
                    "The machine is set to %s memory; no document says what the board asks for then."
                            .formatted(redundancy.text()));
            return;
        }
        RedundancyTerms terms = known.get();
        boolean sets = setsHold(situation, terms, collector);
        boolean channels = channelsHold(situation, terms, collector);
        if (sets && channels) {
            collector.report(Weight.PASSES, () -> Statement.of("The memory is %s. %s".formatted(
                            redundancy.text(), Counting.kept(situation, terms)))
                    .by(situation.board().sourceOf(BoardFact.REDUNDANCY)));
        }
    }

    private static boolean setsHold(Situation situation, RedundancyTerms terms, Collector collector) {
        List<FillSet> sets = FillFacts.redundancySets(situation);
        if (terms.sets().isEmpty()) {
            return true;
        }
        if (sets.isEmpty()) {
            report(situation, collector, Weight.UNKNOWN, MissingFact.BOARD_FACT, List.of(), () ->
                    "No document says which sockets are filled for %s memory with so many processors (%d)."
                            .formatted(terms.redundancy().text(), situation.setup().processors()));
            return false;
        }
        boolean holds = true;
        FillSet gap = null;
        for (int i = 0; i < sets.size(); i++) {
            FillSet set = sets.get(i);
            int filled = filled(situation, set);
            if (filled > 0 && filled < set.slots().size()) {
                holds = false;
                report(situation, collector, Weight.BLOCKS, null, set.slots(), () ->
                        "Of sockets %s %d of %d are filled; for %s memory they are filled together.".formatted(
                                String.join(", ", set.slots()), filled, set.slots().size(), terms.redundancy().text()));
            } else if (filled > 0 && !FillFacts.areAlike(situation, set.slots())) {
                holds = false;
                collector.report(Weight.BLOCKS, () -> Statement.of(
                                "The modules in sockets %s are not alike, as %s memory wants.".formatted(
                                        String.join(", ", set.slots()), terms.redundancy().text()))
                        .in(set.slots())
                        .by(Source.of(Ground.MEMORY)));
            }
            if (filled > 0 && gap != null) {
                holds = false;
                FillSet first = gap;
                report(situation, collector, departure(situation.board().fill().binding()), null, set.slots(), () ->
                        "Sockets %s are filled, sockets %s before them are not.".formatted(
                                String.join(", ", set.slots()), String.join(", ", first.slots())));
            }
            gap = gap == null && filled == 0 ? set : gap;
        }
        return outsideHold(situation, terms, sets, collector) && holds;
    }

    /** What is in no set is kept by nothing; channels that don't count have a reason of their own. */
    private static boolean outsideHold(
            Situation situation, RedundancyTerms terms, List<FillSet> sets, Collector collector) {
        boolean holds = true;
        List<Placed> modules = situation.modules();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (!module.isSoldered() && !isInAny(sets, module.label())
                    && !terms.ignoredChannels().contains(module.slot().channel())) {
                holds = false;
                report(situation, collector, Weight.BLOCKS, null, List.of(module.label()), () ->
                        "%s is in none of the sets that the document prints for %s memory.".formatted(
                                module, terms.redundancy().text()));
            }
        }
        return holds;
    }

    private static boolean isInAny(List<FillSet> sets, String label) {
        for (int i = 0; i < sets.size(); i++) {
            if (sets.get(i).slots().contains(label)) {
                return true;
            }
        }
        return false;
    }

    private static boolean channelsHold(Situation situation, RedundancyTerms terms, Collector collector) {
        boolean holds = true;
        for (int i = 0; i < situation.board().channels().size(); i++) {
            if (situation.channelKibibytes(i) == 0) {
                continue;
            }
            Channel channel = situation.board().channels().get(i);
            int index = i;
            if (terms.ignoredChannels().contains(channel.name())) {
                holds = false;
                report(situation, collector, Weight.LOWERS, null, labels(situation, i), () ->
                        "The memory of channel %s doesn't count while memory is %s.".formatted(
                                channel.name(), terms.redundancy().text()));
            } else if (terms.channelRanks().isPresent()) {
                int wanted = terms.channelRanks().getAsInt();
                int least = ranks(situation, i, false);
                int most = ranks(situation, i, true);
                if (least < wanted) {
                    holds = false;
                    boolean surely = most < wanted;
                    report(situation, collector, surely ? Weight.BLOCKS : Weight.UNKNOWN, MissingFact.RANKS,
                            labels(situation, index), () -> (surely
                                    ? "The modules of channel %s have %d ranks together; %s memory wants at least %d."
                                    : "The modules of channel %s have %d ranks or more together, not all are known; "
                                            + "%s memory wants at least %d.")
                                            .formatted(channel.name(), surely ? most : least,
                                                    terms.redundancy().text(), wanted));
                }
            }
        }
        return holds;
    }

    private static int ranks(Situation situation, int channel, boolean most) {
        int sum = 0;
        for (Placed module : situation.modules()) {
            if (module.channel() == channel) {
                OptionalInt ranks = ModuleFacts.ranks(module.kind());
                sum += ranks.isPresent() ? ranks.getAsInt() : most ? ModuleFacts.mostRanks(module.kind()) : 1;
            }
        }
        return sum;
    }

    private static int filled(Situation situation, FillSet set) {
        int filled = 0;
        for (int i = 0; i < set.slots().size(); i++) {
            filled += situation.filled().contains(set.slots().get(i)) ? 1 : 0;
        }
        return filled;
    }

    private static List<String> labels(Situation situation, int channel) {
        return situation.inChannel(channel).stream().map(Placed::label).toList();
    }

    private static void report(Situation situation, Collector collector, Weight weight, MissingFact missing,
            List<String> labels, Supplier<String> sentence) {
        collector.report(weight, () -> {
            Statement words = Statement.of(sentence.get())
                    .in(labels)
                    .by(situation.board().sourceOf(BoardFact.REDUNDANCY));
            return missing == null ? words : words.missing(missing);
        });
    }
}
