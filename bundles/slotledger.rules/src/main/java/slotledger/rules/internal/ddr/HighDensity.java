package slotledger.rules.internal.ddr;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** An unbuffered DDR or DDR2 DIMM does not have x4 chips. */
@Component(service = MemoryRule.class)
@RuleId("ddr-high-density")
public final class HighDensity extends ModuleRule {

    /** The smallest chip of which high-density modules were made: 64M x 4 (from memory). */
    private static final ChipSize SMALLEST = ChipSize.ofMbit(256);
    private static final long LEAST = ModuleFacts.product(1, ChipWidth.X4, SMALLEST);
    private static final Set<Buffering> UNBUFFERED_ONLY = Set.of(Buffering.UNBUFFERED);

    public HighDensity() {
        super(new RulePage(
                "ddr-high-density",
                "An unbuffered DDR or DDR2 DIMM has x8 or x16 chips; one of x4 chips, sold as high density, is seen as "
                        + "half its size or not at all by most boards.",
                Source.document("HP Hardware Reference Guide (705 G1 and others)",
                        "\"DIMMs with x4 SDRAM are not supported\"; that JEDEC allows x4 on registered modules only is "
                                + "from memory"),
                "Read the organisation of the chips in the part number's data sheet: 128M x 4 is high density, 64M x 8 "
                        + "is not. By count: 16 chips on one rank are x4, 16 chips on two ranks are x8.",
                "Choose a module of the same capacity with x8 chips on two ranks (low density); say it in the order.",
                "16 chips of 64M x 4 make one rank: 16 x 4 bits = 64 bits, 16 x 256 Mbit / 8 = 512 MB. 16 chips of "
                        + "32M x 8 make two ranks: 2 x 8 x 8 bits, 2 x 256 MB = 512 MB. Most desktops run the second "
                        + "only."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR, Generation.DDR2);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        ModuleKind kind = module.kind();
        Set<ChipWidth> allowed = module.way().chipWidths();
        if (!families().contains(module.way().generation()) || kind.form().filter(Form.DIMM::equals).isEmpty()
                || !isUnbuffered(module) || allowed.contains(ChipWidth.X4)) {
            return SILENT;
        }
        Optional<ChipWidth> width = ModuleFacts.chipWidth(kind);
        if (width.isPresent()) {
            return width.get() != ChipWidth.X4 ? PASSES : allowed.isEmpty() ? UNKNOWN : BLOCKS;
        }
        return kind.capacity().kibibytes() < LEAST || kind.ranks().isPresent() && kind.ranks().getAsInt() > 1
                ? PASSES : CAUTION;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String sentence = switch (weight) {
            case CAUTION -> "%s may be of high density: if its chips are x4, the board sees half of it or nothing.";
            case BLOCKS -> "%s is of high density: it has x4 chips without a register, and the board works with wider "
                    + "chips only.";
            case UNKNOWN, LOWERS, PASSES -> "%s is of high density: it has x4 chips without a register, of which most "
                    + "boards see half or nothing, and no document says what this one does.";
        };
        return Statement.of(sentence.formatted(module))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.CHIP_WIDTH))
                .missing(MissingFact.BOARD_FACT);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module is of high density (x4 chips without a register).");
    }

    private static boolean isUnbuffered(Placed module) {
        return module.way().bufferings().equals(UNBUFFERED_ONLY)
                || ModuleFacts.buffering(module.kind()).filter(each -> each == Buffering.UNBUFFERED).isPresent();
    }
}
