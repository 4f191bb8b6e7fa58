package slotledger.rules.internal.ddr5;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.server.Servers;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR5 server holds modules with chips of one width. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-chip-widths")
public final class OneChipWidth extends Rule {

    public OneChipWidth() {
        super(new RulePage(
                "ddr5-chip-widths",
                "A server with DDR5 modules never mixes x4 and x8 chips.",
                Source.document(
                        "PowerEdge R860 Installation and Service Manual; Lenovo ThinkSystem SR630 V3 User Guide",
                        "general memory module installation guidelines; independent mode installation rules"),
                "Read the organisation on the labels: 1Rx4 has x4 chips, 1Rx8 has x8 chips. The same capacity comes "
                        + "in both.",
                "Use modules with chips of one width; say the width in the order.",
                "32 GB modules come as 1Rx4 (16 chips of 16 Gbit) and as 2Rx8 (2 x 8 chips of 16 Gbit). Eight of each "
                        + "have 512 GB together, but x4 and x8 chips: not allowed."));
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
        ChipWidth first = null;
        boolean mixed = false;
        boolean unknown = false;
        boolean unlike = false;
        for (int i = 0; i < modules.size(); i++) {
            ModuleKind kind = modules.get(i).kind();
            Optional<ChipWidth> width = ModuleFacts.chipWidth(kind);
            unknown |= width.isEmpty();
            unlike |= !kind.equals(modules.get(0).kind());
            if (width.isPresent()) {
                mixed |= first != null && width.get() != first;
                first = first == null ? width.get() : first;
            }
        }
        if (mixed) {
            collector.report(Weight.BLOCKS, () -> Statement.of(
                            "Chips of different width are mixed (%s).".formatted(text(modules)))
                    .in(Slots.labels(modules)));
        } else if (unknown && unlike) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            "The chip width is not known of all modules (%s), and x4 and x8 don't mix."
                                    .formatted(text(modules)))
                    .in(Slots.labels(modules))
                    .missing(MissingFact.CHIP_WIDTH));
        } else if (!unknown) {
            String width = first.text();
            collector.report(Weight.PASSES, () -> Statement.of("All modules have %s chips.".formatted(width)));
        }
    }

    private static String text(List<Placed> modules) {
        return Slots.by(modules,
                module -> ModuleFacts.chipWidth(module.kind()).map(ChipWidth::text).orElse("unknown width"));
    }
}
