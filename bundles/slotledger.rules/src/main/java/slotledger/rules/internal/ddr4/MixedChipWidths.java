package slotledger.rules.internal.ddr4;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
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

/** DDR4 modules of x4 and of x8 chips mostly run together. */
@Component(service = MemoryRule.class)
@RuleId("ddr4-chip-widths")
public final class MixedChipWidths extends Rule {

    public MixedChipWidths() {
        super(new RulePage(
                "ddr4-chip-widths",
                "DDR4 servers mostly run modules of x4 and of x8 chips together; some forbid it.",
                Source.document(
                        "XC Core XC750xa Installation and Service Manual",
                        "page 57: x4 and x8 can be mixed; the PowerEdge R7425 manual, page 104, forbids it"),
                "Read the organisation on the labels: 2Rx4 has x4 chips, 2Rx8 has x8 chips. The board's manual says "
                        + "whether both may be in one machine.",
                "Look into the board's manual before mixing; where it says nothing, keep to one width.",
                "A server holds 4 x 32 GB 2Rx4. 4 x 16 GB 2Rx8 beside them run on an XC750xa, as x4 and x8 may mix "
                        + "there, and not on a PowerEdge R7425. A failing x4 chip (4 bits) is mended whole, a failing "
                        + "x8 chip (8 bits) is not in every mode."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR4);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        if (modules.size() < 2 || !Servers.concerns(situation)) {
            return;
        }
        ChipWidth first = null;
        for (int i = 0; i < modules.size(); i++) {
            Optional<ChipWidth> width = ModuleFacts.chipWidth(modules.get(i).kind());
            if (width.isEmpty()) {
                continue;
            }
            if (first != null && width.get() != first) {
                collector.report(Weight.CAUTION, () -> Statement.of(
                                "Chips of different width are mixed (%s): most DDR4 servers run them, some forbid it."
                                        .formatted(text(modules)))
                        .in(Slots.labels(modules)));
                return;
            }
            first = width.get();
        }
    }

    private static String text(List<Placed> modules) {
        return Slots.by(modules, module -> ModuleFacts.chipWidth(module.kind()).map(ChipWidth::text).orElse(""));
    }
}
