package slotledger.rules.internal.rdram;

import java.util.List;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The capacity of a RIMM is a whole number of chips. */
@Component(service = MemoryRule.class)
@RuleId("rimm-chip-arithmetic")
public final class RimmChipsAddUp extends RdramRule {

    public RimmChipsAddUp() {
        super(new RulePage(
                "rimm-chip-arithmetic",
                "The capacity of a RIMM is chips x chip size, with up to 16 chips on each channel it carries.",
                Source.document("Intel Desktop Board D850GB manual", "table 5: 4, 6, 8, 12 or 16 chips"),
                "Read label and part number again: capacity or chip size is noted wrongly. Chips of 144, 288 or 576 "
                        + "Mbit hold 128, 256 or 512 Mbit of data and the rest for ECC.",
                "Correct the figures, or ask the supplier; do not order by them.",
                "128 MB of 128 Mbit chips are 128 x 8 / 128 = 8 chips. 512 MB of 128 Mbit chips would be 32: no "
                        + "184-pin RIMM has so many, the chips must have 256 Mbit."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        boolean passed = false;
        boolean objected = false;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.kind().chipSize().isEmpty()) {
                continue;
            }
            OptionalInt chips = RdramChips.of(module.kind());
            if (chips.isEmpty() || chips.getAsInt() > RdramChips.most(module.kind())) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> objection(module));
            } else {
                passed = true;
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("Capacity and chip size of the modules fit each other.")
                    .by(Source.of(Ground.COMPUTED)));
        }
    }

    private static Statement objection(Placed module) {
        ModuleKind kind = module.kind();
        int mbit = RdramChips.dataMbit(kind.chipSize().orElseThrow());
        double chips = kind.capacity().kibibytes() / (mbit * 128.0);
        String count = chips == Math.rint(chips) ? Integer.toString((int) chips) : "%.1f".formatted(chips);
        return Statement.of("%s can't exist: %s of chips that hold %d Mbit are %s chips; it can have 1 to %d."
                        .formatted(module, kind.capacity(), mbit, count, RdramChips.most(kind)))
                .in(module).by(Source.of(Ground.COMPUTED));
    }
}
