package slotledger.rules.internal.chips;

import java.util.Optional;
import java.util.Set;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/**
 * Where a document doesn't name the largest chip, silence is dangerous for chips larger than the first controllers of
 * the family know.
 */
public abstract class UnsaidChips extends ModuleRule {

    private final Set<Generation> families;
    private final ChipSize usual;
    private final boolean suspicious;

    /**
     * A rule of one family.
     *
     * @param usual      the largest chip that every controller of the family knows
     * @param suspicious whether modules of few large chips are so common that an unknown number of chips is a caution
     */
    protected UnsaidChips(RulePage page, Generation family, ChipSize usual, boolean suspicious) {
        super(page);
        families = Set.of(family);
        this.usual = usual;
        this.suspicious = suspicious;
    }

    @Override
    public final Set<Generation> families() {
        return families;
    }

    @Override
    protected final Optional<Weight> weigh(Placed module) {
        ModuleKind kind = module.kind();
        if (module.way().largestChip().isPresent() || !families.contains(module.way().generation())
                || ModuleFacts.buffering(kind).filter(each -> each != Buffering.UNBUFFERED).isPresent()) {
            return SILENT;
        }
        Optional<ChipSize> size = ModuleFacts.chipSize(kind);
        if (size.isPresent()) {
            return size.get().compareTo(usual) <= 0 ? PASSES : UNKNOWN;
        }
        long onSixteen = ModuleFacts.product(2, ChipWidth.X8, usual);
        long onEight = ModuleFacts.product(1, ChipWidth.X8, usual);
        long capacity = kind.capacity().kibibytes();
        return capacity > onSixteen ? UNKNOWN : suspicious && capacity > onEight ? CAUTION : SILENT;
    }

    @Override
    protected final Statement explain(Placed module, Weight weight, Situation situation) {
        Optional<ChipSize> size = ModuleFacts.chipSize(module.kind());
        String has = size.isPresent() ? "has chips of " + size.get()
                : weight == Weight.UNKNOWN ? "has chips of more than " + usual + ", if it has no more than 16"
                        : "needs 16 chips to have none of more than " + usual;
        return Statement.of("%s %s; every board of the family knows chips up to %s, and no document says what this "
                        .formatted(module, has, usual) + "one knows.")
                .in(module)
                .by(situation.board().sourceOf(BoardFact.CHIP_SIZE))
                .missing(MissingFact.BOARD_FACT);
    }

    @Override
    protected final Statement pass(Situation situation) {
        return Statement.of("No module has larger chips than every board of the family knows (%s).".formatted(usual));
    }
}
