package slotledger.simm.internal;

import java.util.Optional;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Component;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A module has a capacity its family is made in. */
@Component(service = MemoryRule.class)
@RuleId("simm-capacity")
public final class UsualCapacity extends SimmModuleRule {

    public UsualCapacity() {
        super(new RulePage(
                "simm-capacity",
                "30-pin SIMMs hold 256 KB, 1, 4 or 16 MB, 72-pin SIMMs 1 to 64 MB in doubling steps.",
                Source.document("BrainBell A+ text", "list of 72-pin SIMM capacities; those of 30-pin SIMMs from "
                        + "memory"),
                "Capacity = words x data bits / 8, parity not counted: 1M x 36 is 1M x 32 / 8 = 4 MB, 4x9-70 is 4 MB. "
                        + "Chips printed 4C4001 or 44100 have 4 Mbit.",
                "Read label and chips again. Some boards want special logic on large modules: Mac II and IIx on "
                        + "those of 4 MB and more. That is a fact of the board: write the largest plain module into "
                        + "its board file.",
                "A cell says 2 MB for a 30-pin SIMM. It is 256 KB or 1 MB, or 2 MB are two modules of 1 MB."));
    }

    @Override
    Optional<Weight> weighInPageMode(Placed module) {
        Optional<Family> family = Families.of(module.kind());
        if (family.isEmpty()) {
            return SILENT;
        }
        long kibibytes = module.kind().capacity().kibibytes();
        boolean within = kibibytes >= family.get().smallest().kibibytes()
                && kibibytes <= family.get().largest().kibibytes();
        return within && isStep(module.kind(), kibibytes / family.get().smallest().kibibytes()) ? PASSES : CAUTION;
    }

    /** 30-pin SIMMs grow by address lines, each of which makes four times the capacity; others double. */
    private static boolean isStep(ModuleKind kind, long times) {
        boolean doubles = Long.bitCount(times) == 1
                && Depth.of(kind).isPresent() && Depth.of(kind).get().isPowerOfTwo();
        boolean small = kind.form().isPresent() && kind.form().get() == Form.SIMM_30;
        return doubles && (!small || Long.numberOfTrailingZeros(times) % 2 == 0);
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        Family family = Families.of(module.kind()).orElseThrow();
        return Statement.of("%s is unusual: a %s holds from %s to %s%s.".formatted(module, family.name(),
                        family.smallest(), family.largest(),
                        family.form() == Form.SIMM_30 ? ", four times more each step" : ", doubling each step"))
                .in(module);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules have a usual capacity: %s.".formatted(situation.described().stream()
                .map(Placed::kind)
                .flatMap(kind -> Depth.of(kind).map(depth -> kind.capacity() + " = " + depth.text(kind)).stream())
                .distinct()
                .collect(Collectors.joining(", "))));
    }
}
