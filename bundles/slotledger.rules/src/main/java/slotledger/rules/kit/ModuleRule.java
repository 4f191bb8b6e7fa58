package slotledger.rules.kit;

import java.util.List;
import java.util.Optional;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A rule that looks at each module in a socket by itself, against what the board says the socket takes. */
public abstract class ModuleRule extends Rule {

    protected static final Optional<Weight> SILENT = Optional.empty();
    protected static final Optional<Weight> PASSES = Optional.of(Weight.PASSES);
    protected static final Optional<Weight> CAUTION = Optional.of(Weight.CAUTION);
    protected static final Optional<Weight> UNKNOWN = Optional.of(Weight.UNKNOWN);
    protected static final Optional<Weight> BLOCKS = Optional.of(Weight.BLOCKS);

    protected ModuleRule(RulePage page) {
        super(page);
    }

    /** What the module means; empty where the board's document is silent. Builds no text. */
    protected abstract Optional<Weight> weigh(Placed module);

    /** Why the module has a weight other than passing. */
    protected abstract Statement explain(Placed module, Weight weight, Situation situation);

    /** Why all modules pass. */
    protected abstract Statement pass(Situation situation);

    @Override
    public final void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        boolean passed = false;
        boolean objected = false;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            Optional<Weight> weight = weigh(module);
            if (weight.isEmpty()) {
                continue;
            }
            if (weight.get() == Weight.PASSES) {
                passed = true;
            } else {
                objected = true;
                collector.report(weight.get(), () -> explain(module, weight.get(), situation));
            }
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> pass(situation));
        }
    }
}
