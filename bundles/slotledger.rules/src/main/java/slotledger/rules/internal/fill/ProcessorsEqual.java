package slotledger.rules.internal.fill;

import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.operation.Split;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** All installed processors have the same memory. */
@Component(service = MemoryRule.class)
@RuleId("processors-equal")
public final class ProcessorsEqual extends Rule {

    public ProcessorsEqual() {
        super(new RulePage(
                "processors-equal",
                "All installed processors have the same amount of memory.",
                Source.document(
                        "PowerEdge FC430 Owner's Manual",
                        "page 56, general memory module installation guidelines: the same configuration for each "
                                + "processor"),
                "Add up the capacities by processor; the board's map says which slot belongs to which.",
                "Spread the modules evenly over the processors.",
                "Two processors share 8 modules of 8 GB. With 4 each both have 32 GB; with 6 and 2 the second has "
                        + "to reach through the first."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        int processors = situation.setup().processors();
        if (processors == 1 || situation.hasUnread()) {
            return;
        }
        Split first = Split.of(situation, 1);
        for (int processor = 2; processor <= processors; processor++) {
            Split other = Split.of(situation, processor);
            if (!other.total().equals(first.total())) {
                int number = processor;
                collector.report(Weight.LOWERS, () -> Statement.of(
                        "Processor 1 has %s, processor %d has %s.".formatted(first.total(), number, other.total())));
                return;
            }
        }
        collector.report(Weight.PASSES, () -> Statement.of("All processors have %s.".formatted(first.total())));
    }
}
