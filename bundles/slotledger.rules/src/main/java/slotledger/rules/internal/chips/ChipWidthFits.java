package slotledger.rules.internal.chips;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
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

/** The chips of a module are as wide as the board works with. */
@Component(service = MemoryRule.class)
@RuleId("chip-width")
public final class ChipWidthFits extends ModuleRule {

    public ChipWidthFits() {
        super(new RulePage(
                "chip-width",
                "A board works with chips of certain widths; most desktops do not work with x4 chips.",
                Source.document(
                        "HP Hardware Reference Guide (705 G1 and others)",
                        "\"DIMMs with x4 SDRAM are not supported\""),
                "Read the organisation on the label: 2Rx8 means two ranks of x8 chips. Else count the chips of a "
                        + "64-bit module without those for ECC: 16 on one rank are x4, 8 are x8, 4 are x16.",
                "Choose a module with chips of a width that the board works with; say it in the order.",
                "A 1 GB DDR2 module of 16 chips of 512 Mbit as one rank has x4 chips (64 bits / 16 chips). A "
                        + "desktop that works with x8 and x16 sees half of it or nothing."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        Set<ChipWidth> allowed = module.way().chipWidths();
        Optional<ChipWidth> width = ModuleFacts.chipWidth(module.kind());
        if (allowed.isEmpty()) {
            return module.way().generation().compareTo(Generation.DDR) >= 0 && isUnbuffered(module)
                    && width.isPresent() && width.get() == ChipWidth.X4 ? UNKNOWN : SILENT;
        }
        if (width.isPresent()) {
            return allowed.contains(width.get()) ? PASSES : BLOCKS;
        }
        if (isUnbuffered(module)) {
            boolean usual = allowed.contains(ChipWidth.X8) && allowed.contains(ChipWidth.X16);
            return usual ? PASSES : UNKNOWN;
        }
        return allowed.contains(ChipWidth.X4) && allowed.contains(ChipWidth.X8) ? PASSES : UNKNOWN;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        Optional<ChipWidth> width = ModuleFacts.chipWidth(module.kind());
        String has = width.map(known -> "has " + known.text() + " chips").orElse("has chips of unknown width");
        String board = module.way().chipWidths().isEmpty()
                ? "no document says whether this unbuffered board works with them"
                : "the board works with " + text(module.way().chipWidths());
        return Statement.of("%s %s; %s.".formatted(module, has, board))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.CHIP_WIDTH))
                .missing(module.way().chipWidths().isEmpty() ? MissingFact.BOARD_FACT : MissingFact.CHIP_WIDTH);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules have chips of a width the board works with.")
                .by(situation.board().sourceOf(BoardFact.CHIP_WIDTH));
    }

    private static boolean isUnbuffered(Placed module) {
        return module.way().bufferings().equals(Set.of(Buffering.UNBUFFERED))
                || ModuleFacts.buffering(module.kind()).filter(each -> each == Buffering.UNBUFFERED).isPresent();
    }

    private static String text(Set<ChipWidth> widths) {
        List<String> words = new TreeSet<>(widths).stream().map(ChipWidth::text).toList();
        return String.join(" or ", words);
    }
}
