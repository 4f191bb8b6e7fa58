package slotledger.model.trade;

import java.util.Currency;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Money;

/**
 * A price for one pack from a quantity on.
 *
 * @param fromPacks smallest number of packs, at least 1
 * @param perPack   price of one pack, tax left out
 * @param quoted    the price as the supplier wrote it, where that was in another currency
 */
public record PriceStep(int fromPacks, Money perPack, Optional<Money> quoted) {

    public PriceStep(int fromPacks, Money perPack) {
        this(fromPacks, perPack, Optional.empty());
    }

    public PriceStep {
        Objects.requireNonNull(perPack, "perPack");
        Objects.requireNonNull(quoted, "quoted");
        if (fromPacks < 1) {
            throw new IllegalArgumentException(
                    "The quantity (%d packs) of a price must be at least 1.".formatted(fromPacks));
        }
        if (perPack.minor() < 0) {
            throw new IllegalArgumentException("The price (%s) must not be negative.".formatted(perPack));
        }
    }

    /** The same price in another currency; remembers what it was. */
    PriceStep in(Currency currency, ExchangeRate rate) {
        return new PriceStep(fromPacks, rate.convert(perPack, currency), Optional.of(perPack));
    }
}
