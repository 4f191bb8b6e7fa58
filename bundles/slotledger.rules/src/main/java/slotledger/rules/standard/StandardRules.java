package slotledger.rules.standard;

import java.util.List;
import slotledger.rules.MemoryRules;
import slotledger.rules.internal.DefaultMemoryRules;
import slotledger.rules.internal.StandardRuleList;
import slotledger.rules.spi.MemoryRule;

/** The rules that come with Slotledger, for use without a service registry. */
public final class StandardRules {

    private StandardRules() {
    }

    /** All of them together, as the service would give them. */
    public static MemoryRules create() {
        return of(list());
    }

    /** Chosen rules together. Fails where two have the same id. */
    public static MemoryRules of(List<MemoryRule> rules) {
        return new DefaultMemoryRules(rules);
    }

    /** Each rule. */
    public static List<MemoryRule> list() {
        return StandardRuleList.create();
    }
}
