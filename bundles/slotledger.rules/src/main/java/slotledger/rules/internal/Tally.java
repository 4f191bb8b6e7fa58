package slotledger.rules.internal;

import java.util.function.Supplier;
import slotledger.model.verdict.Weight;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.Statement;

/** Keeps the worst weight and how often it came; lets the words go. */
final class Tally implements Collector, Comparable<Tally> {

    Weight worst = Weight.PASSES;
    int objections;
    private int times;

    @Override
    public void report(Weight weight, Supplier<Statement> statement) {
        objections += weight == Weight.PASSES ? 0 : 1;
        if (weight == worst) {
            times++;
        } else if (weight.compareTo(worst) > 0) {
            worst = weight;
            times = 1;
        }
    }

    /** Lighter first; of equally heavy ones the one with fewer objections. How often a rule passed doesn't count. */
    @Override
    public int compareTo(Tally other) {
        int byWeight = worst.compareTo(other.worst);
        return byWeight != 0 || worst == Weight.PASSES ? byWeight : Integer.compare(times, other.times);
    }
}
