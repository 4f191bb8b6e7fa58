package slotledger.rules.internal.ddr2;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR2 DIMM with x16 chips on two ranks is not for every board. */
@Component(service = MemoryRule.class)
@RuleId("ddr2-double-sided-x16")
public final class DoubleSidedX16 extends ModuleRule {

    public DoubleSidedX16() {
        super(new RulePage(
                "ddr2-double-sided-x16",
                "Some DDR2 boards don't work with DIMMs that have x16 chips on both sides.",
                Source.document("Board manual PMPGF001", "memory: x16 double-sided modules are not supported"),
                "Count the chips: a rank of x16 chips has 4, so that a DIMM with 4 chips on each side is 2Rx16.",
                "Choose a module with x8 chips, or one with x16 chips on one side. Where the board's document forbids "
                        + "2Rx16, describe x8 and x16 as two ways of filling each slot, the second of 1 rank.",
                "A 512 MB module 2Rx16 has 2 x 4 chips of 512 Mbit: 8 x 512 Mbit / 8 = 512 MB. The same 512 MB as "
                        + "1Rx8 has 8 chips of 512 Mbit on one side."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR2);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().generation() != Generation.DDR2 || module.kind().form().filter(Form.DIMM::equals).isEmpty()) {
            return SILENT;
        }
        OptionalInt ranks = ModuleFacts.ranks(module.kind());
        Optional<ChipWidth> width = ModuleFacts.chipWidth(module.kind());
        if (ranks.isEmpty() || width.isEmpty()) {
            return SILENT;
        }
        return ranks.getAsInt() > 1 && width.get() == ChipWidth.X16 ? CAUTION : PASSES;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s has x16 chips on two ranks, which some boards of this family don't work with."
                        .formatted(module))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.CHIP_WIDTH));
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module has x16 chips on two ranks.");
    }
}
