package slotledger.rules.internal.rdram;

import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** RIMMs run very hot. */
@Component(service = MemoryRule.class)
@RuleId("rimm-heat")
public final class RimmHeat extends RdramRule {

    public RimmHeat() {
        super(new RulePage(
                "rimm-heat",
                "RIMMs run very hot, and power comes back only when every socket is filled again.",
                Source.document("OptiPlex GX400 service manual", "memory: modules run very hot; a removed module is "
                        + "replaced by another or by a continuity module before power-on"),
                "They carry a metal heat spreader over the chips.",
                "Let them cool after power-off. Put a module or a continuity module into each socket that a module "
                        + "was taken out of, before power-on.",
                "Taking 1 of 2 RIMMs out of a one-channel board needs 1 continuity module at hand."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!situation.described().isEmpty()) {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            "RIMMs run very hot: let them cool, and leave no socket empty before power-on.")
                    .in(situation.filled()));
        }
    }
}
