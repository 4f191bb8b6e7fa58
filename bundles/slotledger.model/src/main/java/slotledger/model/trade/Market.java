package slotledger.model.trade;

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
}
