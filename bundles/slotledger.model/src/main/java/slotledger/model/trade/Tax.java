package slotledger.model.trade;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Percent;

/**
 * Tax on goods and delivery. Offers are priced without it.
 *
 * @param percent   of goods whose offer names none of its own, and of delivery; empty where nothing is known of tax
 * @param inBudgets whether budgets are meant with tax
 */
public record Tax(Optional<Percent> percent, boolean inBudgets) {

    /** Nothing is said of tax, and budgets are meant without it. */
    public static final Tax UNSAID = new Tax(Optional.empty(), false);

    public Tax {
        Objects.requireNonNull(percent, "percent");
    }

    /** The tax on an offer's goods. */
    public Percent on(Offer offer) {
        return offer.tax().or(() -> percent).orElse(Percent.of(0));
    }

    public Percent onDelivery() {
        return percent.orElse(Percent.of(0));
    }
}
