package slotledger.rules.spi;

import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.rules.RulePage;

/**
 * One rule. Register it as a service with the property of {@link RuleId}; it is then asked with all others.
 *
 * <p>A rule keeps no state and is safe for use by several threads. The planner asks very often, so a rule compares
 * numbers first and leaves every text to the supplier it hands to the collector. Where the board's document is silent
 * the rule reports nothing, except where silence is dangerous.
 */
public interface MemoryRule {

    /** What a person can read about the rule; always the same. */
    RulePage page();

    /**
     * The generations it speaks of; it is only asked for boards that take one of them. Empty for a general rule, which
     * is asked for every generation that some other rule names: those have a law. Always the same.
     */
    Set<Generation> families();

    /** Looks at a population and reports what it finds, or that all is well, or nothing. */
    void judge(Situation situation, Collector collector);

    /** The stable id. */
    default String id() {
        return page().id();
    }
}
