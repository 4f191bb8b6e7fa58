package slotledger.simm.internal;

import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Modules of this family are only to be had used. */
@Component(service = MemoryRule.class)
@RuleId("simm-used-stock")
public final class UsedStock extends SimmRule {

    public UsedStock() {
        super(new RulePage(
                "simm-used-stock",
                "FPM and EDO modules are no longer sold new: what is bought is used stock.",
                Source.of(Ground.PRACTICE),
                "No maker lists them; offers are from dealers in used parts, and lots differ.",
                "Buy the modules of a bank as a matched set from one lot, test each before it goes in, and keep "
                        + "spares: at least one whole bank of each kind.",
                "A bank of 4 is wanted for 5 machines: 5 x 4 = 20 modules, and one more bank of 4 as spares. Test all "
                        + "24 in one machine first."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (isUsed(situation)) {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            "Modules of this family are only to be had used: take matched sets from one lot, test "
                                    + "them first, keep spares.")
                    .in(situation.filled()));
        }
    }
}
