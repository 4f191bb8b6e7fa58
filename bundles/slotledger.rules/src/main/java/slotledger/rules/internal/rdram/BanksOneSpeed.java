package slotledger.rules.internal.rdram;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Source;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Banks of RIMM sockets hold modules of one speed. */
@Component(service = MemoryRule.class)
@RuleId("rimm-banks-one-speed")
public final class BanksOneSpeed extends RdramRule {

    public BanksOneSpeed() {
        super(new RulePage(
                "rimm-banks-one-speed",
                "On a board with two channels the RIMMs of the second bank may be of any size, but are of the same "
                        + "speed as those of the first.",
                Source.document("Intel Desktop Board D850GB manual", "section 1.5.3: the same speed as bank 0"),
                "Read the label: PC600, PC700, PC800, PC1066 or PC1200; on 232-pin RIMMs 3200, 4200 or 4800.",
                "Use modules of one speed in the whole machine.",
                "Bank 0 holds 2 x 128 MB PC800. 2 x 256 MB PC800 may join them, 2 x 256 MB PC600 may not."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!RimmBanks.arePairs(situation.board())) {
            return;
        }
        List<Placed> modules = situation.described();
        boolean any = false;
        Placed unrated = null;
        for (int i = 0; i < modules.size(); i++) {
            for (int j = i + 1; j < modules.size(); j++) {
                Placed one = modules.get(i);
                Placed other = modules.get(j);
                if (RimmBanks.same(situation.board(), one, other)) {
                    continue;
                }
                any = true;
                Optional<Rate> first = one.kind().rate();
                Optional<Rate> second = other.kind().rate();
                if (first.isPresent() && second.isPresent() && !first.equals(second)) {
                    collector.report(Weight.BLOCKS, () -> Statement.of(
                                    "%s runs at %s, %s at %s: all banks must be of one speed.".formatted(one,
                                            first.get(), other.inSentence(), second.get()))
                            .in(List.of(one.label(), other.label())));
                    return;
                }
                boolean open = first.isEmpty() || second.isEmpty();
                if (unrated == null && open && !one.kind().equals(other.kind())) {
                    unrated = first.isEmpty() ? one : other;
                }
            }
        }
        if (unrated != null) {
            Placed module = unrated;
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            "The speed of %s is not known, and all banks must be of one.".formatted(
                                    module.inSentence()))
                    .in(module)
                    .missing(MissingFact.RATE));
        } else if (any) {
            collector.report(Weight.PASSES, () -> Statement.of("All banks hold modules of one speed."));
        }
    }
}
