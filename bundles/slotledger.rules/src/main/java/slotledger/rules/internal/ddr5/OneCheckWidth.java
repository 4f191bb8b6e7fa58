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

/** DDR5 modules with 4 and with 8 check bits a half channel are not mixed. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-check-bits")
public final class OneCheckWidth extends Rule {

    private static final int EC4 = 4;

    public OneCheckWidth() {
        super(new RulePage(
                "ddr5-check-bits",
                "DDR5 modules with 4 check bits a half channel (EC4, 9x4) never run with such of 8 (EC8, 10x4).",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 User Guide",
                        "independent mode installation rules: 9x4 RDIMM cannot be mixed with non-9x4 RDIMMs"),
                "Read the label: EC4 or 9x4 against EC8 or 10x4. Else count the x4 chips of a rank: 2 x 9 = 18 are "
                        + "EC4, 2 x 10 = 20 are EC8. The capacity doesn't tell them apart.",
                "Use modules with the same number of check bits; say it in the order.",
                "A half channel has 32 data bits. With EC4 it is 36 bits wide: 9 chips x4; with EC8 40 bits: 10 "
                        + "chips x4. Both modules hold 32 GB as 1Rx4 of 16 Gbit, and they don't run together."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        int first = 0;
        int unknown = 0;
        boolean mixed = false;
        for (int i = 0; i < modules.size(); i++) {
            ModuleKind kind = modules.get(i).kind();
            if (kind.checkBits().isPresent()) {
                int bits = kind.checkBits().getAsInt();
                mixed |= first != 0 && bits != first;
                first = first == 0 ? bits : first;
            } else if (ModuleFacts.checkBits(kind).orElse(true)) {
                unknown++;
            }
        }
        if (mixed) {
            collector.report(Weight.BLOCKS, () -> Statement.of(
                            "Modules with different check bits are mixed (%s).".formatted(text(modules)))
                    .in(Slots.labels(modules)));
        } else if (first == EC4 && unknown > 0 && Servers.concerns(situation)) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            "The check bits are not known of all modules (%s), and 4 and 8 don't mix."
                                    .formatted(text(modules)))
                    .in(Slots.labels(modules))
                    .missing(MissingFact.CHECK_BITS));
        } else if (first != 0 && unknown == 0) {
            int bits = first;
            collector.report(Weight.PASSES, () -> Statement.of(
                    "All modules with check bits have %d for each half channel: %d bits instead of 32."
                            .formatted(bits, 32 + bits)));
        }
    }

    private static String text(List<Placed> modules) {
        return Slots.by(modules, module -> {
            ModuleKind kind = module.kind();
            if (kind.checkBits().isEmpty()) {
                return ModuleFacts.checkBits(kind).orElse(true) ? "unknown" : "none";
            }
            int bits = kind.checkBits().getAsInt();
            boolean x4 = ModuleFacts.chipWidth(kind).equals(Optional.of(ChipWidth.X4));
            return "EC" + bits + (x4 ? ", %dx4".formatted((32 + bits) / 4) : "");
        });
    }
}
