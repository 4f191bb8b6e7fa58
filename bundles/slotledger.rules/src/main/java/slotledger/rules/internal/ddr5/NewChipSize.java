package slotledger.rules.internal.ddr5;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Modules of 24 Gbit chips need a firmware that knows them. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-24-gbit")
public final class NewChipSize extends ModuleRule {

    private static final int GBIT_24 = 24 * 1024;

    public NewChipSize() {
        super(new RulePage(
                "ddr5-24-gbit",
                "Modules of 24 and 48 GB have chips of 24 Gbit, which boards older than these need a firmware "
                        + "update for.",
                Source.of(Ground.MEMORY),
                "Look at the capacity: 24, 48 or 96 GB mean chips of 24 Gbit. The notes of the board's firmware say "
                        + "since which version it knows them.",
                "Update the firmware with the old modules in, then change the modules; or use 16, 32 or 64 GB.",
                "48 GB 2Rx8 is 2 x 8 chips x 24 Gbit / 8. A desktop of 2022 with its first firmware may not start "
                        + "with it; with a firmware of 2023 it has 2 x 48 = 96 GB."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (Dies.mebibits(module.kind()) != GBIT_24 || module.way().largestChip().isPresent()) {
            return SILENT;
        }
        return CAUTION;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s has chips of 24 Gbit; no document says whether the board's firmware knows them."
                        .formatted(module))
                .in(module);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("The board knows the chips of all modules.");
    }
}
