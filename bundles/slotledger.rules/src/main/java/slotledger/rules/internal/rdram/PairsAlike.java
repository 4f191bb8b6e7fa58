package slotledger.rules.internal.rdram;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ModuleKind;
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

/** The modules of a bank of RIMM sockets are identical. */
@Component(service = MemoryRule.class)
@RuleId("rimm-pairs-alike")
public final class PairsAlike extends RdramRule {

    public PairsAlike() {
        super(new RulePage(
                "rimm-pairs-alike",
                "The RIMMs of a bank are identical in size, chips and speed.",
                Source.document("Intel Desktop Board D850GB manual", "section 1.5.3: the two modules of a bank are "
                        + "identical in speed, size and density"),
                "Compare the labels: capacity, number of chips (256MB/8 means 8 of them) and speed (PC800-45).",
                "Use two modules of one kind in a bank; best buy them as a pair.",
                "256 MB of 8 chips beside 256 MB of 16 chips are no pair: 8 x 256 Mbit against 16 x 128 Mbit."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!RimmBanks.arePairs(situation.board())) {
            return;
        }
        List<Placed> modules = situation.described();
        boolean any = false;
        boolean objected = false;
        for (int i = 0; i < modules.size(); i++) {
            for (int j = i + 1; j < modules.size(); j++) {
                Placed one = modules.get(i);
                Placed other = modules.get(j);
                if (RimmBanks.same(situation.board(), one, other)) {
                    any = true;
                    Weight weight = compare(one.kind(), other.kind());
                    if (weight != Weight.PASSES) {
                        objected = true;
                        collector.report(weight, () -> objection(situation, one, other, weight));
                    }
                }
            }
        }
        if (any && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("The modules of each bank are identical."));
        }
    }

    /** Kinds that are equal count as identical, whatever is unknown of both. */
    private static Weight compare(ModuleKind one, ModuleKind other) {
        if (one.equals(other)) {
            return Weight.PASSES;
        }
        if (!one.capacity().equals(other.capacity()) || differ(mbit(one), mbit(other))
                || differ(one.rate(), other.rate()) || differ(one.accessTime(), other.accessTime())
                || differ(one.errorCheck(), other.errorCheck())) {
            return Weight.BLOCKS;
        }
        return one.chipSize().isEmpty() || other.chipSize().isEmpty() || one.rate().isEmpty() || other.rate().isEmpty()
                ? Weight.UNKNOWN
                : Weight.PASSES;
    }

    private static Optional<Integer> mbit(ModuleKind kind) {
        Optional<ChipSize> size = kind.chipSize();
        return size.isEmpty() ? Optional.empty() : Optional.of(RdramChips.dataMbit(size.get()));
    }

    private static boolean differ(Optional<?> one, Optional<?> other) {
        return one.isPresent() && other.isPresent() && !one.equals(other);
    }

    private static Statement objection(Situation situation, Placed one, Placed other, Weight weight) {
        String both = "%s (%s) and %s (%s)".formatted(one.label(), one.kind(), other.label(), other.kind());
        Statement statement = Statement.of(weight == Weight.BLOCKS
                        ? "The modules in %s are read together but are not identical.".formatted(both)
                        : "It is not known whether the modules in %s, which are read together, are identical."
                                .formatted(both))
                .in(List.of(one.label(), other.label()))
                .by(situation.board().sourceOf(BoardFact.BANKS));
        if (weight == Weight.BLOCKS) {
            return statement;
        }
        boolean chips = one.kind().chipSize().isEmpty() || other.kind().chipSize().isEmpty();
        return statement.missing(chips ? MissingFact.CHIP_SIZE : MissingFact.RATE);
    }
}
