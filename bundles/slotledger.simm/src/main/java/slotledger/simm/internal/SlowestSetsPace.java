package slotledger.simm.internal;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.AccessTime;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** All memory is timed for the slowest module. */
@Component(service = MemoryRule.class)
@RuleId("simm-pace")
public final class SlowestSetsPace extends SimmRule {

    public SlowestSetsPace() {
        super(new RulePage(
                "simm-pace",
                "The slowest module sets the pace of all banks, and one bank of FPM that of EDO.",
                Source.of(Ground.PRACTICE),
                "Compare the access times on the chips of all banks; see whether the setup has a memory timing.",
                "Use one access time and one kind in all banks, or set the timing in the setup for the slowest.",
                "60 ns in bank 0 and 70 ns in bank 1: all is timed for 70 ns. On a board that is made for 70 ns "
                        + "nothing is lost."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        AccessTime slowest = null;
        AccessTime fastest = null;
        boolean madeForSlowest = true;
        boolean fpm = false;
        boolean edo = false;
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            ModuleKind kind = modules.get(i).kind();
            fpm |= kind.generation().isPresent() && kind.generation().get() == Generation.FPM;
            edo |= kind.generation().isPresent() && kind.generation().get() == Generation.EDO;
            if (kind.accessTime().isPresent()) {
                AccessTime time = kind.accessTime().get();
                slowest = slowest == null || time.slowerThan(slowest) ? time : slowest;
                fastest = fastest == null || fastest.slowerThan(time) ? time : fastest;
            }
        }
        for (int i = 0; i < modules.size(); i++) {
            madeForSlowest &= slowest != null && modules.get(i).way().slowest().isPresent()
                    && !slowest.slowerThan(modules.get(i).way().slowest().get());
        }
        if (fpm && edo) {
            collector.report(Weight.LOWERS, () -> Statement.of(
                            "FPM and EDO modules are mixed: all run as FPM at best.")
                    .in(situation.filled()));
        }
        if (slowest != null && !slowest.equals(fastest)) {
            AccessTime low = slowest;
            AccessTime high = fastest;
            boolean lost = !madeForSlowest;
            collector.report(lost ? Weight.LOWERS : Weight.PASSES, () -> Statement.of((lost
                            ? "Modules of %s are timed like those of %s."
                            : "The modules have %s and %s; the board is made for the slower.").formatted(high, low))
                    .in(situation.filled()));
        }
    }
}
