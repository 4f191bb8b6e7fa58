package slotledger.rules.kit;

import java.util.Objects;
import java.util.Set;
import slotledger.model.board.Binding;
import slotledger.model.module.Generation;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.MemoryRule;

/** What our own rules share. */
public abstract class Rule implements MemoryRule {

    private final RulePage page;

    protected Rule(RulePage page) {
        this.page = Objects.requireNonNull(page, "page");
    }

    @Override
    public final RulePage page() {
        return page;
    }

    /** Every family that has a law of its own. A rule of one family names it. */
    @Override
    public Set<Generation> families() {
        return Set.of();
    }

    /** What a departure from the document's fill order means. */
    protected static Weight departure(Binding binding) {
        return switch (binding) {
            case REQUIRED -> Weight.BLOCKS;
            case RECOMMENDED -> Weight.LOWERS;
        };
    }
}
