package slotledger.model.trade;

import java.util.Objects;
import slotledger.model.unit.Money;

/**
 * A price for one pack from a quantity on; it then holds for all packs ordered.
 *
 * @param fromPacks smallest number of packs, at least 1
 * @param perPack   price of one pack, tax left out
 */
public record PriceStep(int fromPacks, Money perPack) {

    public PriceStep {
        Objects.requireNonNull(perPack, "perPack");
        if (fromPacks < 1) {
            throw new IllegalArgumentException(
                    "The quantity (%d packs) of a price must be at least 1.".formatted(fromPacks));
        }
        if (perPack.minor() < 0) {
            throw new IllegalArgumentException("The price (%s) must not be negative.".formatted(perPack));
        }
    }
}
