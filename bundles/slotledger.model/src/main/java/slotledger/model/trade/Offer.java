package slotledger.model.trade;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.module.Piece;
import slotledger.model.source.Place;
import slotledger.model.unit.Money;

/**
 * A supplier's price for modules or fillers of one kind.
 *
 * @param id         unique among all offers, "supplier/part"
 * @param supplier   name of the supplier
 * @param part       the supplier's part number
 * @param maker      who makes the modules; empty means unknown
 * @param piece      what is in the pack
 * @param packSize   modules in a pack
 * @param steps      prices by quantity, the first from one pack on, ascending
 * @param stock      packs that can be had; empty means as many as wanted
 * @param leadDays   days until delivery; empty means unknown
 * @param priceDate  day of the price
 * @param validUntil last day the offer holds
 * @param place      where it was read
 */
public record Offer(
        String id,
        String supplier,
        String part,
        Optional<String> maker,
        Piece piece,
        int packSize,
        List<PriceStep> steps,
        OptionalInt stock,
        OptionalInt leadDays,
        Optional<LocalDate> priceDate,
        Optional<LocalDate> validUntil,
        Place place) {

    public Offer {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(supplier, "supplier");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(piece, "piece");
        steps = List.copyOf(steps);
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(leadDays, "leadDays");
        Objects.requireNonNull(priceDate, "priceDate");
        Objects.requireNonNull(validUntil, "validUntil");
        Objects.requireNonNull(place, "place");
        if (packSize < 1) {
            throw new IllegalArgumentException(
                    "The pack size (%d) of offer %s must be at least 1.".formatted(packSize, id));
        }
        if (steps.isEmpty() || steps.get(0).fromPacks() != 1) {
            throw new IllegalArgumentException("The offer %s must have a price for one pack.".formatted(id));
        }
        for (int i = 1; i < steps.size(); i++) {
            if (steps.get(i).fromPacks() <= steps.get(i - 1).fromPacks()) {
                throw new IllegalArgumentException("The quantities of offer %s must ascend.".formatted(id));
            }
        }
    }

    /** An offer that names no maker. */
    public Offer(
            String id,
            String supplier,
            String part,
            Piece piece,
            int packSize,
            List<PriceStep> steps,
            OptionalInt stock,
            OptionalInt leadDays,
            Optional<LocalDate> priceDate,
            Optional<LocalDate> validUntil,
            Place place) {
        this(id, supplier, part, Optional.empty(), piece, packSize, steps, stock, leadDays, priceDate, validUntil,
                place);
    }

    /** The price of one pack when this many are ordered. */
    public Money perPack(int packs) {
        Money price = steps.get(0).perPack();
        for (PriceStep step : steps) {
            if (packs >= step.fromPacks()) {
                price = step.perPack();
            }
        }
        return price;
    }
}
