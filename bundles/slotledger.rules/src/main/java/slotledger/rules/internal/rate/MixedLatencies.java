package slotledger.rules.internal.rate;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ModuleKind;
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

/** Modules of one rating have the same CAS latency. */
@Component(service = MemoryRule.class)
@RuleId("mixed-latencies")
public final class MixedLatencies extends Rule {

    public MixedLatencies() {
        super(new RulePage(
                "mixed-latencies",
                "Modules of one rating best have the same CAS latency; else all run at the slowest.",
                Source.document("ASUS desktop board manuals", "\"always install DIMMs with the same CAS latency\""),
                "Read the CAS latency on the label (CL16, or the letter after the rate: DDR4-2666V is CL19), or look "
                        + "up the part number.",
                "Use modules of one latency; mixed ones usually run at the slowest.",
                "Two DDR4-2666 modules, one CL17 and one CL19, run both at 19 clock cycles."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.modules();
        for (int i = 0; i < modules.size(); i++) {
            ModuleKind one = modules.get(i).kind();
            for (int j = 0; j < i; j++) {
                ModuleKind other = modules.get(j).kind();
                if (one.casLatency().isPresent() && other.casLatency().isPresent()
                        && one.rate().equals(other.rate())
                        && one.casLatency().getAsInt() != other.casLatency().getAsInt()) {
                    List<String> labels = List.of(modules.get(j).label(), modules.get(i).label());
                    collector.report(Weight.CAUTION, () -> Statement.of(
                                    "The modules in slots %s and %s have CAS latencies of %d and %d clock cycles."
                                            .formatted(labels.get(0), labels.get(1), other.casLatency().getAsInt(),
                                                    one.casLatency().getAsInt()))
                            .in(labels));
                    return;
                }
            }
        }
    }
}
