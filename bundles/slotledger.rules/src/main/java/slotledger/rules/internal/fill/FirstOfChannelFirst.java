package slotledger.rules.internal.fill;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Fill;
import slotledger.model.board.Slot;
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

/** The first slot of a channel is filled before the second. */
@Component(service = MemoryRule.class)
@RuleId("first-of-channel")
public final class FirstOfChannelFirst extends Rule {

    private static final Set<Generation> DDR_ON =
            Collections.unmodifiableSet(EnumSet.range(Generation.DDR, Generation.LPDDR5X));

    public FirstOfChannelFirst() {
        super(new RulePage(
                "first-of-channel",
                "Where no document gives an order, the first slot of a channel is filled before the others.",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 User Guide",
                        "independent mode installation rules: in each channel the slot farthest from the processor "
                                + "(slot 0) first"),
                "The first slot is the one the manual calls first, or that stands farthest from the processor.",
                "Move the module to the first slot of its channel.",
                "Channel A has A1 (first) and A2. 1 module in A2 with A1 empty lets the wires of A1 end open; a grade "
                        + "of 2666 MT/s may run only at less, or not start."));
    }

    @Override
    public Set<Generation> families() {
        return DDR_ON;
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Fill fill = situation.board().fill();
        if (!fill.order().isEmpty() || !fill.table().isEmpty()) {
            return;
        }
        List<Placed> modules = situation.modules();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.isSoldered() || module.slot().position() == 1) {
                continue;
            }
            for (int j = 0; j < situation.board().slots().size(); j++) {
                Slot slot = situation.board().slots().get(j);
                if (slot.isSocket() && slot.channel().equals(module.slot().channel())
                        && slot.position() < module.slot().position()
                        && situation.setup().population().in(slot.label()).isEmpty()) {
                    collector.report(Weight.CAUTION, () -> Statement.of(
                                    "%s is behind slot %s of the same channel, which is empty."
                                            .formatted(module, slot.label()))
                            .in(List.of(module.label(), slot.label())));
                    return;
                }
            }
        }
    }
}
