package slotledger.rules.internal.slots;

import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A machine has some memory. */
@Component(service = MemoryRule.class)
@RuleId("some-memory")
public final class SomeMemory extends Rule {

    public SomeMemory() {
        super(new RulePage(
                "some-memory",
                "A machine does not start without memory.",
                Source.of(Ground.PRACTICE),
                "See whether the firmware counts any memory; a machine without any stays dark or beeps.",
                "Put at least one module in.",
                "A machine whose two modules of 4 GB are both wanted elsewhere must get at least one other module."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.modules().isEmpty() && !situation.hasUnread()) {
            collector.report(Weight.BLOCKS, () -> Statement.of("No slot holds a module: the machine does not start."));
        }
    }
}
