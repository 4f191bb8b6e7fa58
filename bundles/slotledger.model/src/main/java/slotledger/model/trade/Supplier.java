package slotledger.model.trade;

import java.util.Currency;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Money;

/**
 * Who sells, and on which terms.
 *
 * @param name     as the offers name it
 * @param shipping charge for one delivery; empty means none
 * @param freeFrom order value from which delivery is free
 * @param minimum  smallest order value
 */
public record Supplier(String name, Optional<Money> shipping, Optional<Money> freeFrom, Optional<Money> minimum) {

    public Supplier {
        Objects.requireNonNull(shipping, "shipping");
        Objects.requireNonNull(freeFrom, "freeFrom");
        Objects.requireNonNull(minimum, "minimum");
        if (name.isBlank()) {
            throw new IllegalArgumentException("The name of a supplier must not be blank.");
        }
    }

    /** The same terms in a currency; what is in another one is turned where its rate is stated. */
    Supplier in(Currency currency, Buying buying) {
        return new Supplier(name, in(shipping, currency, buying), in(freeFrom, currency, buying),
                in(minimum, currency, buying));
    }

    private static Optional<Money> in(Optional<Money> amount, Currency currency, Buying buying) {
        return amount.map(known -> known.currency().equals(currency) ? known
                : buying.rate(known.currency()).map(rate -> rate.convert(known, currency)).orElse(known));
    }
}
