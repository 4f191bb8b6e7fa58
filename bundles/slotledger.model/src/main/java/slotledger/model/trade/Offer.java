package slotledger.model.trade;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.module.Piece;
import slotledger.model.source.Place;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;

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
 * @param rule       for which packs each of these prices holds
 * @param stock      packs that can be had; empty means as many as wanted
 * @param leadDays   days until delivery; empty means unknown
 * @param priceDate  day of the price
 * @param validUntil last day the offer holds
 * @param tax        tax on it where the supplier names one; never part of the price
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
        PriceRule rule,
        OptionalInt stock,
        OptionalInt leadDays,
        Optional<LocalDate> priceDate,
        Optional<LocalDate> validUntil,
        Optional<Percent> tax,
        Place place) {

    /** An offer that names no maker and no tax, and whose prices hold for all packs ordered. */
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
        this(id, supplier, part, Optional.empty(), piece, packSize, steps, PriceRule.ALL_PACKS, stock, leadDays,
                priceDate, validUntil, Optional.empty(), place);
    }

    public Offer {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(supplier, "supplier");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(piece, "piece");
        steps = List.copyOf(steps);
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(stock, "stock");
        Objects.requireNonNull(leadDays, "leadDays");
        Objects.requireNonNull(priceDate, "priceDate");
        Objects.requireNonNull(validUntil, "validUntil");
        Objects.requireNonNull(tax, "tax");
        Objects.requireNonNull(place, "place");
        if (packSize < 1) {
            throw new IllegalArgumentException(
                    "The pack size (%d) of offer %s must be at least 1.".formatted(packSize, id));
        }
        if (steps.isEmpty() || steps.get(0).fromPacks() != 1) {
            throw new IllegalArgumentException("The offer %s must have a price for one pack.".formatted(id));
        }
        if (steps.stream().map(step -> step.perPack().currency()).distinct().count() != 1) {
            throw new IllegalArgumentException("The prices of offer %s must be in one currency.".formatted(id));
        }
        for (int i = 1; i < steps.size(); i++) {
            if (steps.get(i).fromPacks() <= steps.get(i - 1).fromPacks()) {
                throw new IllegalArgumentException("The quantities of offer %s must ascend.".formatted(id));
            }
        }
    }

    /** How many packs hold so many modules. */
    public long packsFor(long modules) {
        return -Math.floorDiv(-modules, (long) packSize);
    }

    /** The price that an order of so many packs reaches; by the rule it holds for all of them or for the last ones. */
    public Money perPack(int packs) {
        return steps.get(reached(packs)).perPack();
    }

    /** The exact price of so many packs together. */
    public Money total(int packs) {
        int reached = reached(packs);
        if (rule == PriceRule.ALL_PACKS) {
            return steps.get(reached).perPack().times(packs);
        }
        Money total = Money.zero(currency());
        for (int i = 0; i <= reached; i++) {
            int last = i < reached ? steps.get(i + 1).fromPacks() - 1 : packs;
            total = total.plus(steps.get(i).perPack().times(last - steps.get(i).fromPacks() + 1L));
        }
        return total;
    }

    private int reached(int packs) {
        int reached = 0;
        while (reached + 1 < steps.size() && packs >= steps.get(reached + 1).fromPacks()) {
            reached++;
        }
        return reached;
    }

    public Currency currency() {
        return steps.get(0).perPack().currency();
    }

    /** The last day on which it arrives when ordered on a day; empty where the lead time is not known. */
    public Optional<LocalDate> arrival(LocalDate ordered) {
        return leadDays.isPresent() ? Optional.of(ordered.plusDays(leadDays.getAsInt())) : Optional.empty();
    }

    public Offer withStock(OptionalInt packs) {
        return new Offer(id, supplier, part, maker, piece, packSize, steps, rule, packs, leadDays, priceDate,
                validUntil, tax, place);
    }

    /** The same offer in another currency; its steps remember what they were. */
    Offer in(Currency other, ExchangeRate rate) {
        return new Offer(id, supplier, part, maker, piece, packSize,
                steps.stream().map(step -> step.in(other, rate)).toList(), rule, stock, leadDays, priceDate,
                validUntil, tax, place);
    }
}
