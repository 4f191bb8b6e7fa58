package slotledger.simm.internal;

import java.util.Optional;
import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.Placed;

/** A rule of page-mode memory that looks at each module by itself. */
abstract class SimmModuleRule extends ModuleRule {

    SimmModuleRule(RulePage page) {
        super(page);
    }

    @Override
    public final Set<Generation> families() {
        return SimmRule.PAGE_MODE;
    }

    /** Boards of 1997 have SIMM and DIMM sockets side by side; what is in the latter is no matter of this law. */
    @Override
    protected final Optional<Weight> weigh(Placed module) {
        return ModuleFacts.isPageMode(module.way().generation()) ? weighInPageMode(module) : SILENT;
    }

    /** What the module means in a socket for page-mode memory; empty where the board's document is silent. */
    abstract Optional<Weight> weighInPageMode(Placed module);
}
