package slotledger.rules.internal.rdram;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.AccessTime;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A RIMM answers as fast as the board wants. */
@Component(service = MemoryRule.class)
@RuleId("rimm-access-time")
public final class RimmAccessTime extends RdramRule {

    public RimmAccessTime() {
        super(new RulePage(
                "rimm-access-time",
                "The grade of a RIMM is its rate and its access time; no module is slower than the board wants.",
                Source.of(Ground.MEMORY),
                "Read the label: in PC800-45 the rate is 800 MT/s and the access time 45 ns. The bins are 53, 50, 45 "
                        + "and 40 ns up to PC800, 35, 32 and 32P up to PC1066.",
                "Choose a module with the same number after the rate, or a smaller one.",
                "A board for PC800-40 does not take a module PC800-45: 45 ns are more than 40 ns. A board for "
                        + "PC800-45 takes both."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        boolean passed = false;
        boolean objected = false;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            Optional<AccessTime> slowest = module.way().slowest();
            Optional<AccessTime> has = module.kind().accessTime();
            if (slowest.isEmpty()) {
                continue;
            }
            if (has.isEmpty()) {
                objected = true;
                collector.report(Weight.UNKNOWN, () -> statement(situation, module,
                                "%s has an unknown access time; the board wants %s or less.".formatted(
                                        module, slowest.get()))
                        .missing(MissingFact.ACCESS_TIME)
                        .advising("Read the number after the rate on its label: PC800-45 means 45 ns."));
            } else if (has.get().slowerThan(slowest.get())) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> statement(situation, module,
                        "%s answers after %s; the board wants %s or less.".formatted(
                                module, has.get(), slowest.get())));
            } else {
                passed = true;
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules answer as fast as the board wants.")
                    .by(situation.board().sourceOf(BoardFact.ACCESS_TIME)));
        }
    }

    private static Statement statement(Situation situation, Placed module, String sentence) {
        return Statement.of(sentence).in(module).by(situation.board().sourceOf(BoardFact.ACCESS_TIME));
    }
}
