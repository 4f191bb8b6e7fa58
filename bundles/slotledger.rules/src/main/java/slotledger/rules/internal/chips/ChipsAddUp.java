package slotledger.rules.internal.chips;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Capacity, ranks, width and chip size of a module fit each other. */
@Component(service = MemoryRule.class)
@RuleId("chip-arithmetic")
public final class ChipsAddUp extends ModuleRule {

    public ChipsAddUp() {
        super(new RulePage(
                "chip-arithmetic",
                "The capacity of a module is chip size x dies stacked x chips a rank x ranks; a module whose figures "
                        + "do not fit each other does not exist.",
                Source.document(
                        "JEDEC JESD21-C, section 4",
                        "a rank has 64 data bits, 32 on 72-pin SIMMs, 8 on 30-pin SIMMs; checked against five makers' "
                                + "tables"),
                "Chips a rank = data bits of a rank / chip width, without chips for ECC. Read label and part number "
                        + "again: one of capacity, ranks, chip width and chip size is noted wrongly.",
                "Correct the figures, or ask the supplier; do not order by them.",
                "2 GB, one rank, x16 chips of 2 Gbit: a rank has 64 / 16 = 4 chips, 4 x 2 Gbit = 1 GB, not 2 GB. "
                        + "The chips must be x8."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        ModuleKind kind = module.kind();
        if (kind.ranks().isEmpty() || kind.chipWidth().isEmpty() || kind.chipSize().isEmpty()) {
            return SILENT;
        }
        long product =
                ModuleFacts.product(kind, kind.ranks().getAsInt(), kind.chipWidth().get(), kind.chipSize().get());
        if (product == 0) {
            return SILENT;
        }
        long capacity = kind.capacity().kibibytes();
        if (kind.stack().isPresent()) {
            return product * kind.stack().getAsInt() == capacity ? PASSES : BLOCKS;
        }
        if (product == capacity) {
            return PASSES;
        }
        return ModuleFacts.mayBeStacked(kind) && isStack(capacity, product) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        ModuleKind kind = module.kind();
        int ranks = kind.ranks().orElseThrow();
        int bits = kind.chipWidth().orElseThrow().bits();
        int chips = Math.max(1, ModuleFacts.rankBits(kind) / bits);
        int dies = kind.stack().orElse(1);
        Capacity product = Capacity.ofKiB(dies
                * ModuleFacts.product(kind, ranks, kind.chipWidth().orElseThrow(), kind.chipSize().orElseThrow()));
        String stack = dies == 1 ? "" : "%d dies of ".formatted(dies);
        return Statement.of("%s can't exist: %d x %d chips (%s) of %s%s make %s, not %s.".formatted(
                        module, ranks, chips, kind.chipWidth().orElseThrow().text(), stack,
                        kind.chipSize().orElseThrow(), product, kind.capacity()))
                .in(module)
                .by(Source.of(Ground.COMPUTED));
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("Capacity, ranks, chip width and chip size fit each other where all are known.")
                .by(Source.of(Ground.COMPUTED));
    }

    /** Stacked chips hold 2, 4, 8 or 16 dies (JESD21-C annex L and JESD400-5, die count). */
    private static boolean isStack(long capacity, long product) {
        long dies = capacity / product;
        return capacity % product == 0 && (dies == 2 || dies == 4 || dies == 8 || dies == 16);
    }
}
