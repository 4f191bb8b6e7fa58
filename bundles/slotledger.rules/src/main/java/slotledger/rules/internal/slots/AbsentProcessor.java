package slotledger.rules.internal.slots;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
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

/** Slots of a processor that is not installed stay empty. */
@Component(service = MemoryRule.class)
@RuleId("absent-processor")
public final class AbsentProcessor extends Rule {

    public AbsentProcessor() {
        super(new RulePage(
                "absent-processor",
                "A slot works only if the processor its channel belongs to is installed.",
                Source.document(
                        "PowerEdge FC430 Owner's Manual",
                        "page 56, general memory module installation guidelines: sockets only of an installed "
                                + "processor"),
                "Look which processor sockets are filled, or ask the running machine how many processors it has; the "
                        + "board's map says which slots belong to which.",
                "Move the module to a slot of an installed processor.",
                "A server with two processor sockets has one processor, in socket 1, and 24 slots. Modules in A1 to "
                        + "A12 work; 4 x 16 GB in B1 to B4 are not seen: the firmware counts 0 GB of those 64 GB."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.board().processorSockets() == 1) {
            return;
        }
        boolean objected = false;
        for (Placed module : situation.modules()) {
            if (module.processor() > situation.setup().processors()) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> Statement.of(
                                "%s belongs to processor %d; only %d installed.".formatted(module, module.processor(),
                                        situation.setup().processors()))
                        .in(module)
                        .by(situation.board().sourceOf(BoardFact.CHANNELS)));
            }
        }
        if (!objected) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules are in slots of installed processors.")
                    .by(situation.board().sourceOf(BoardFact.CHANNELS)));
        }
    }
}
