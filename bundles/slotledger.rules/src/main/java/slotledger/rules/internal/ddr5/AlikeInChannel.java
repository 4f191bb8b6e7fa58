package slotledger.rules.internal.ddr5;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Two DDR5 modules of a channel are alike. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-alike-in-channel")
public final class AlikeInChannel extends Rule {

    public AlikeInChannel() {
        super(new RulePage(
                "ddr5-alike-in-channel",
                "Two DDR5 modules in one channel are best of the same part number.",
                Source.document(
                        "Intel support article 000088926",
                        "mixed part numbers in one channel: the rate may drop, or no start"),
                "Compare the part numbers of the modules in one channel; modules sold together as a set have the same.",
                "Put modules of the same part number into one channel, or use one larger module a channel.",
                "A1 holds 16 GB DDR5-4800 and A2 of the same channel 8 GB DDR5-5600: the machine may run slower "
                        + "than 4800 MT/s or not start. One module of 24 GB in A1 makes the same total."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        for (int i = 1; i < modules.size(); i++) {
            for (int j = 0; j < i; j++) {
                Placed one = modules.get(j);
                Placed other = modules.get(i);
                if (one.channel() == other.channel() && !one.kind().equals(other.kind())) {
                    collector.report(Weight.CAUTION, () -> Statement.of(
                                    "Channel %s holds modules of different kinds: %s in %s; %s in %s.".formatted(
                                            one.slot().channel(), one.kind(), one.label(), other.kind(),
                                            other.label()))
                            .in(List.of(one.label(), other.label())));
                    return;
                }
            }
        }
    }
}
