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
                "The capacity of a module is chip size x chips a rank x ranks; a module whose figures do not fit "
                        + "each other does not exist.",
                Source.document(
                        "JEDEC JESD21-C, section 4.20",
                        "a rank of a DIMM is 64 data bits wide; checked against five makers' tables"),
                "Read label and part number again: one of capacity, ranks, chip width and chip size is noted "
                        + "wrongly.",
                "Correct the figures, or ask the supplier; do not order by them.",
                "2 GB, one rank, x16 chips of 2 Gbit: a rank has 64 / 16 = 4 chips, 4 x 2 Gbit = 1 GB, not 2 GB. "
                        + "The chips must be x8."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        ModuleKind kind = module.kind();
        if (kind.ranks().isEmpty() || kind.chipWidth().isEmpty() || kind.chipSize().isEmpty()
                || !ModuleFacts.hasRanksOfChips(kind)) {
            return SILENT;
        }
        long product =
                ModuleFacts.product(kind, kind.ranks().getAsInt(), kind.chipWidth().get(), kind.chipSize().get());
        long capacity = kind.capacity().kibibytes();
        if (product == capacity) {
            return PASSES;
        }
        return ModuleFacts.mayBeStacked(kind) && isStack(capacity, product) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        ModuleKind kind = module.kind();
        int ranks = kind.ranks().orElseThrow();
        int chips = ModuleFacts.chipsPerRank(kind, kind.chipWidth().orElseThrow());
        Capacity product = Capacity.ofKiB(
                ModuleFacts.product(kind, ranks, kind.chipWidth().orElseThrow(), kind.chipSize().orElseThrow()));
        String dies = kind.stack().isEmpty() || kind.stack().getAsInt() == 1 ? ""
                : kind.stack().getAsInt() + " dies of ";
        return Statement.of("%s can't exist: %d x %d chips (%s) of %s%s make %s, not %s.".formatted(module, ranks,
                        chips, kind.chipWidth().orElseThrow().text(), dies, kind.chipSize().orElseThrow(), product,
                        kind.capacity()))
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
