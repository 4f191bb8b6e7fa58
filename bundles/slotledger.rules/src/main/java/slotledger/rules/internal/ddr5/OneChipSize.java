package slotledger.rules.internal.ddr5;

import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ChipSize;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.server.Servers;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR5 server holds modules with chips of one size. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-chip-sizes")
public final class OneChipSize extends Rule {

    public OneChipSize() {
        super(new RulePage(
                "ddr5-chip-sizes",
                "A server with DDR5 modules never mixes chips of 16, 24 and 32 Gbit.",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 User Guide",
                        "independent mode installation rules: different DRAM density cannot be mixed"),
                "Look at the capacity: 24, 48 and 96 GB modules have chips of 24 Gbit; 16, 32 and 64 GB of 16 Gbit. "
                        + "128 GB 2Rx4 has 32 Gbit. The part number's data sheet says it too.",
                "Use modules with chips of one size.",
                "48 GB 1Rx4 is 16 chips x 24 Gbit / 8. Beside 64 GB 2Rx4, 32 chips x 16 Gbit / 8, there are chips of "
                        + "24 and of 16 Gbit: not allowed."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        if (modules.isEmpty() || !Servers.concerns(situation)) {
            return;
        }
        int first = 0;
        boolean three = false;
        boolean other = false;
        boolean mixed = false;
        for (int i = 0; i < modules.size(); i++) {
            ModuleKind kind = modules.get(i).kind();
            int size = Dies.mebibits(kind);
            three |= Dies.isOfThirds(kind);
            other |= !Dies.isOfThirds(kind);
            mixed |= size != 0 && first != 0 && size != first;
            first = first == 0 ? size : first;
        }
        if (mixed || three && other) {
            collector.report(Weight.BLOCKS, () -> Statement.of(
                            "Chips of different size are mixed (%s).".formatted(text(modules)))
                    .in(Slots.labels(modules)));
        } else if (first != 0) {
            int size = first;
            collector.report(Weight.PASSES, () -> Statement.of(
                    "No module is known to have chips of another size than %s.".formatted(ChipSize.ofMbit(size))));
        }
    }

    private static String text(List<Placed> modules) {
        return Slots.by(modules, module -> {
            int size = Dies.mebibits(module.kind());
            return size == 0 ? "a size other than 24 Gbit" : ChipSize.ofMbit(size).toString();
        });
    }
}
