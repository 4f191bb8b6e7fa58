package slotledger.rules.spi;

import java.util.function.Supplier;
import slotledger.model.verdict.Weight;

/** Takes what a rule reports. */
public interface Collector {

    /**
     * One thing a rule found.
     *
     * @param weight    what it means
     * @param statement the words; asked only where somebody reads them, so that a planner pays nothing for them
     */
    void report(Weight weight, Supplier<Statement> statement);
}
