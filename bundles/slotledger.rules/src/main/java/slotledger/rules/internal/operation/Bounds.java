package slotledger.rules.internal.operation;

import java.util.function.Supplier;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic.BoundBy;
import slotledger.rules.spi.Placed;

/** Takes what bounds the rate; words are only asked for where somebody reads them. */
interface Bounds {

    /**
     * Why a rate is bounded.
     *
     * @param by   what it comes from
     * @param text a sentence; of a bound that may hold, the missing fact
     */
    record Why(BoundBy by, String text) {
    }

    /** A bound that holds. */
    void sure(Rate rate, Supplier<Why> why);

    /** A bound that holds or not, depending on a missing fact. */
    void maybe(Rate rate, Supplier<Why> why);

    /** A module of which nobody knows what it is rated for. */
    void unrated(Placed module);
}
