package slotledger.rules.internal.rdram;

import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;

/** A rule of RDRAM. */
abstract class RdramRule extends Rule {

    private static final Set<Generation> RDRAM = Set.of(Generation.RDRAM);

    RdramRule(RulePage page) {
        super(page);
    }

    @Override
    public final Set<Generation> families() {
        return RDRAM;
    }
}
