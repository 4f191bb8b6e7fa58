package slotledger.rules.internal.kind;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Buffering;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** All modules of a machine are of one buffering. */
@Component(service = MemoryRule.class)
@RuleId("one-buffering")
public final class OneBuffering extends Rule {

    public OneBuffering() {
        super(new RulePage(
                "one-buffering",
                "Unbuffered, registered and load-reduced modules are never mixed in one machine.",
                Source.document(
                        "Precision Rack 7910 Owner's Manual, page 21; PowerEdge M620 Owner's Manual, page 32",
                        "RDIMMs and LRDIMMs, UDIMMs and RDIMMs must not be mixed"),
                "Read the letter behind the rate on every label: U or E unbuffered, R registered, L load-reduced, F "
                        + "fully buffered. Older modules: two or three flat chips across the middle are registers.",
                "Keep the modules of one buffering and take out the others.",
                "A server takes registered or load-reduced modules. 8 x 16 GB registered run, 8 x 64 GB load-reduced "
                        + "run; 4 of each do not start."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Placed first = null;
        Buffering wanted = null;
        boolean several = false;
        for (Placed module : situation.described()) {
            Optional<Buffering> buffering = ModuleFacts.buffering(module.kind());
            if (buffering.isEmpty()) {
                continue;
            }
            if (wanted == null) {
                wanted = buffering.get();
                first = module;
            } else if (buffering.get() != wanted) {
                Placed one = first;
                collector.report(Weight.BLOCKS, () -> Statement.of(
                                "%s is %s, the one in slot %s is %s; they never run together."
                                .formatted(one, ModuleFacts.buffering(one.kind()).orElseThrow().text(), module.label(),
                                        buffering.get().text()))
                        .in(List.of(one.label(), module.label())));
                return;
            } else {
                several = true;
            }
        }
        if (several) {
            Buffering all = wanted;
            collector.report(Weight.PASSES, () -> Statement.of("All modules are %s.".formatted(all.text())));
        }
    }
}
