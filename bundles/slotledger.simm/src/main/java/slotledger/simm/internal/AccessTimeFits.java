package slotledger.simm.internal;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.AccessTime;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** No module is slower than the board wants. */
@Component(service = MemoryRule.class)
@RuleId("simm-access-time")
public final class AccessTimeFits extends SimmModuleRule {

    public AccessTimeFits() {
        super(new RulePage(
                "simm-access-time",
                "No module is slower than the board wants; a faster one is fine.",
                Source.of(Ground.PRACTICE),
                "Read the last digits of the part number on the chips: -6 or -60 means 60 ns, -7 or -70 means 70 ns. "
                        + "Less is faster.",
                "Choose modules with the same number or a smaller one.",
                "A board wants 70 ns or less. 60 ns modules work, 80 ns modules give errors."));
    }

    @Override
    Optional<Weight> weighInPageMode(Placed module) {
        Optional<AccessTime> slowest = module.way().slowest();
        if (slowest.isEmpty()) {
            return SILENT;
        }
        Optional<AccessTime> has = module.kind().accessTime();
        return has.isEmpty() ? UNKNOWN : has.get().slowerThan(slowest.get()) ? BLOCKS : PASSES;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        AccessTime slowest = module.way().slowest().orElseThrow();
        Optional<AccessTime> has = module.kind().accessTime();
        Statement statement = Statement.of(has.isPresent()
                        ? "%s has %s; the board wants %s or less.".formatted(module, has.get(), slowest)
                        : "%s has an unknown access time; the board wants %s or less.".formatted(module, slowest))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.ACCESS_TIME));
        return has.isPresent() ? statement : statement.missing(MissingFact.ACCESS_TIME);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module is slower than the board wants.")
                .by(situation.board().sourceOf(BoardFact.ACCESS_TIME));
    }
}
