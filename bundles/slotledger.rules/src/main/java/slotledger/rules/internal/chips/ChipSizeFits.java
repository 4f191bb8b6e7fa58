package slotledger.rules.internal.chips;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.kit.Stacks;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The chips of a module are neither larger nor smaller than the controller knows. */
@Component(service = MemoryRule.class)
@RuleId("chip-size")
public final class ChipSizeFits extends ModuleRule {

    public ChipSizeFits() {
        super(new RulePage(
                "chip-size",
                "A memory controller knows chips up to a certain size; of a module with larger chips it sees half "
                        + "or nothing.",
                Source.document(
                        "PC Hardware in a Nutshell, 3rd edition",
                        "chapter 5.4: a 440BX sees 256 MB only as 16 chips of 128 Mbit"),
                "Chip size = capacity x 8 / ranks / chips a rank, where a rank of 64 data bits has 64 / chip width "
                        + "chips. Read ranks and width on the label (2Rx8), count the chips, or look up the part "
                        + "number.",
                "Choose a module of the same capacity with more and smaller chips, or smaller modules.",
                "An 8 GB module 1Rx8 has 8 chips: 8 x 8 Gbit / 8 = 8 Gbit each. A board that knows chips up to 4 "
                        + "Gbit needs an 8 GB module 2Rx8, 16 chips of 4 Gbit."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().largestChip().isEmpty() && module.way().smallestChip().isEmpty()) {
            return SILENT;
        }
        Optional<ChipSize> size = ModuleFacts.chipSize(module.kind());
        int least = size.isPresent() ? size.get().mebibits() : leastPossible(module);
        int most = size.isPresent() ? size.get().mebibits() : mostPossible(module);
        int largest = module.way().largestChip().map(ChipSize::mebibits).orElse(Integer.MAX_VALUE);
        int smallest = module.way().smallestChip().map(ChipSize::mebibits).orElse(0);
        if (least > largest || most < smallest) {
            return BLOCKS;
        }
        return most <= largest && least >= smallest ? PASSES : UNKNOWN;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        Optional<ChipSize> size = ModuleFacts.chipSize(module.kind());
        String has = size.isPresent()
                ? "has chips of " + size.get()
                : weight == Weight.BLOCKS
                        ? "has chips of %s or more, whatever its ranks and width".formatted(
                                ChipSize.ofMbit(leastPossible(module)))
                        : "has chips of unknown size";
        String limits = module.way().smallestChip().map(chip -> " from " + chip).orElse("")
                + module.way().largestChip().map(chip -> " up to " + chip).orElse("");
        return Statement.of("%s %s; the board knows chips%s.".formatted(module, has, limits))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.CHIP_SIZE))
                .missing(MissingFact.CHIP_SIZE);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules have chips of a size the board knows.")
                .by(situation.board().sourceOf(BoardFact.CHIP_SIZE));
    }

    private static int leastPossible(Placed module) {
        ModuleKind kind = module.kind();
        if (ModuleFacts.rankBits(kind) == 0) {
            return 1;
        }
        ChipWidth narrowest = kind.chipWidth().orElse(
                ModuleFacts.buffering(kind).filter(each -> each == Buffering.UNBUFFERED).isPresent()
                        ? usualNarrowest(module.way().generation())
                        : ChipWidth.X4);
        int ranks = kind.ranks().orElse(ModuleFacts.mostRanks(kind));
        if (ModuleFacts.mayBeStacked(kind)) {
            ranks *= Stacks.most(kind);
        }
        return ModuleFacts.chipSize(kind, ranks, narrowest).map(ChipSize::mebibits).orElse(1);
    }

    private static int mostPossible(Placed module) {
        ModuleKind kind = module.kind();
        if (ModuleFacts.rankBits(kind) == 0) {
            return largestMade(module.way().generation());
        }
        ChipWidth widest = kind.chipWidth().orElse(ChipWidth.X16);
        int most = ModuleFacts.chipSize(kind, kind.ranks().orElse(1), widest)
                .map(ChipSize::mebibits)
                .orElse(Integer.MAX_VALUE);
        return Math.max(leastPossible(module), Math.min(most, largestMade(module.way().generation())));
    }

    /** Of unbuffered modules; x4 chips were usual before DDR, x1 chips on SIMMs (from memory). */
    private static ChipWidth usualNarrowest(Generation generation) {
        return switch (generation) {
            case FPM, EDO -> ChipWidth.X1;
            case SDR -> ChipWidth.X4;
            case RDRAM, DDR, DDR2, DDR3, DDR4, DDR5, LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X -> ChipWidth.X8;
        };
    }

    /** The largest chip of each generation, in mebibits (JEDEC standards, from memory). */
    private static int largestMade(Generation generation) {
        return switch (generation) {
            case SDR, RDRAM -> 512;
            case DDR -> 1024;
            case DDR2 -> 4 * 1024;
            case DDR3 -> 8 * 1024;
            case DDR4 -> 16 * 1024;
            case FPM, EDO, DDR5, LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X -> Integer.MAX_VALUE;
        };
    }
}
