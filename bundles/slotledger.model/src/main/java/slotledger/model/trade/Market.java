package slotledger.model.trade;

import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All offers, and the terms of their suppliers.
 *
 * @param offers    in file order, ids unique
 * @param suppliers by name; every supplier of an offer is there
 */
public record Market(List<Offer> offers, Map<String, Supplier> suppliers) {

    /** Nothing can be bought. */
    public static final Market NONE = new Market(List.of(), Map.of());

    public Market {
        offers = List.copyOf(offers);
        suppliers = Map.copyOf(suppliers);
        for (Offer offer : offers) {
            if (!suppliers.containsKey(offer.supplier())) {
                throw new IllegalArgumentException(
                        "The supplier %s of offer %s must be known.".formatted(offer.supplier(), offer.id()));
            }
        }
        if (offers.stream().map(Offer::id).distinct().count() != offers.size()) {
            throw new IllegalArgumentException("The ids of offers must be unique.");
        }
    }

    /** The market in the currency of a policy. What is in a currency whose rate nobody stated stays as it is. */
    public Market in(Policy policy) {
        Currency currency = policy.currency();
        Map<String, Supplier> terms = new LinkedHashMap<>();
        suppliers.forEach((name, supplier) -> terms.put(name, supplier.in(currency, policy.buying())));
        return new Market(offers.stream().map(offer -> in(offer, currency, policy.buying())).toList(), terms);
    }

    private static Offer in(Offer offer, Currency currency, Buying buying) {
        return offer.currency().equals(currency) ? offer
                : buying.rate(offer.currency()).map(rate -> offer.in(currency, rate)).orElse(offer);
    }
}
