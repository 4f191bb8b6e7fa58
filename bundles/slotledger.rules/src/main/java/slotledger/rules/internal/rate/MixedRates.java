package slotledger.rules.internal.rate;

import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Source;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.operation.RunningRate;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A slower module slows all. */
@Component(service = MemoryRule.class)
@RuleId("mixed-rates")
public final class MixedRates extends Rule {

    public MixedRates() {
        super(new RulePage(
                "mixed-rates",
                "All modules run at the rate of the slowest.",
                Source.document("Intel 3rd generation Core datasheet, volume 1", "section 2.1.4"),
                "Compare the rates on the labels: PC4-2133P and PC4-2400T are 2133 and 2400 MT/s. The firmware lists "
                        + "rated and running rate of every module.",
                "Use modules of one rating, or accept the slower rate.",
                "A 2400 MT/s module beside one of 2133 MT/s on a board for 2400 MT/s: both run at 2133 MT/s. On a "
                        + "board for 2133 MT/s nothing is lost."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Rate slowest = null;
        Rate fastest = null;
        for (Placed module : situation.modules()) {
            if (module.kind().rate().isPresent()) {
                Rate rate = module.kind().rate().get();
                slowest = slowest == null ? rate : slowest.min(rate);
                fastest = fastest == null || rate.compareTo(fastest) > 0 ? rate : fastest;
            }
        }
        if (slowest == null || slowest.equals(fastest)) {
            return;
        }
        Rate low = slowest;
        Rate high = fastest;
        boolean lowers = RunningRate.limitBesidesModules(situation)
                .filter(limit -> limit.compareTo(low) <= 0)
                .isEmpty();
        collector.report(lowers ? Weight.LOWERS : Weight.PASSES, () -> Statement.of(lowers
                        ? "Modules rated %s run at the %s of the slowest.".formatted(high, low)
                        : "The modules are rated from %s to %s; the machine runs no faster than the slowest anyway."
                                .formatted(low, high))
                .in(situation.modules().stream().map(Placed::label).toList()));
    }
}
