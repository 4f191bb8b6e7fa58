package slotledger.rules.internal.ddr;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.operation.RunningRate;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** DDR-400 needs 2.6 V to run as such. */
@Component(service = MemoryRule.class)
@RuleId("ddr-400-voltage")
public final class Supply400 extends Rule {

    private static final int GRADE = 400;
    private static final int MILLIVOLTS = 2600;

    public Supply400() {
        super(new RulePage(
                "ddr-400-voltage",
                "DDR-400 is specified at 2.6 V; in a slot of 2.5 V such a module is sure only at a lower rate, which "
                        + "older boards run anyway.",
                new Source(Ground.MEMORY, "JEDEC JESD79", "", Optional.empty()),
                "Read the label: PC3200 is DDR-400. The voltage of the slots stands in the board's manual.",
                "Nothing where the board runs at 333 MT/s or less. Else set the memory to 333 MT/s, or choose modules "
                        + "and a board made for DDR-400.",
                "A board of 2.5 V runs at 333 MT/s at most. A PC3200 module (400 MT/s at 2.6 V) works there at 333 "
                        + "MT/s, for which 2.5 V are enough."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.way().generation() != Generation.DDR || !needsMore(module)) {
                continue;
            }
            Optional<Rate> limit = RunningRate.limitBesidesModules(situation);
            boolean slower = limit.isPresent() && limit.get().megatransfers() < GRADE;
            collector.report(slower ? Weight.PASSES : Weight.CAUTION, () -> Statement.of(slower
                            ? "%s is DDR-400 and runs at the board's %s, for which 2.5 V are enough."
                                    .formatted(module, limit.get())
                            : "%s is DDR-400, specified at 2.6 V; the slot supplies less.".formatted(module))
                    .in(module)
                    .by(situation.board().sourceOf(BoardFact.VOLTAGE)));
            return;
        }
    }

    private static boolean needsMore(Placed module) {
        Optional<Rate> rate = module.kind().rate();
        if (rate.isEmpty() || rate.get().megatransfers() < GRADE || module.way().voltages().isEmpty()) {
            return false;
        }
        for (Voltage supplied : module.way().voltages()) {
            if (supplied.millivolts() >= MILLIVOLTS) {
                return false;
            }
        }
        return true;
    }
}
