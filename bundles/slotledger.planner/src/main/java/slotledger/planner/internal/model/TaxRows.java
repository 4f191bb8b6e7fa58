package slotledger.planner.internal.model;

import java.util.Collection;
import slotledger.model.unit.Percent;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * Tax as each supplier's invoice says it: of goods and delivery together, rounded to the minor unit, half a unit up.
 * That is the least whole number t with 2 D t &gt;= 2 N - D + 1, for a tax of N / D minor units; a budget asks for the
 * least.
 */
final class TaxRows {

    private final IntegerProgramme programme;
    private final long unit;
    private final Linear all = new Linear();

    /**
     * @param percents every percentage that occurs; numbers stay small where they have common factors
     */
    TaxRows(IntegerProgramme programme, Collection<Percent> percents) {
        this.programme = programme;
        this.unit = unit(percents);
    }

    /** The largest number of parts that every percentage, and the whole, is a multiple of. */
    static long unit(Collection<Percent> percents) {
        return percents.stream().mapToLong(Percent::parts).reduce(Percent.PARTS, Divisors::greatestCommon);
    }

    /** Parts of a percentage, as this counts them. */
    long parts(Percent percent) {
        return percent.parts() / unit;
    }

    long whole() {
        return Percent.PARTS / unit;
    }

    /** Adds the tax of one supplier, whose goods and delivery are given in minor units times parts. */
    void add(String supplier, Linear taxed) {
        long[] most = {0};
        taxed.forEach((variable, factor) -> most[0] = Math.addExact(most[0],
                Math.multiplyExact(Math.max(0, factor), programme.high(variable))));
        if (most[0] > 0) {
            int tax = programme.variable("tax of " + supplier, 0, -Math.floorDiv(-most[0], whole()));
            programme.joinAtLeast("tax of " + supplier,
                    new Linear().add(tax, 2 * whole()).add(taxed, -2), 1 - whole());
            all.add(tax, 1);
        }
    }

    /** Tax of all suppliers. */
    Linear all() {
        return all;
    }
}
