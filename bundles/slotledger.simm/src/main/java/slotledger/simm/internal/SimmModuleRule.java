package slotledger.simm.internal;

import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;

/** A rule of page-mode memory that looks at each module by itself. */
abstract class SimmModuleRule extends ModuleRule {

    SimmModuleRule(RulePage page) {
        super(page);
    }

    @Override
    public final Set<Generation> families() {
        return SimmRule.PAGE_MODE;
    }
}
