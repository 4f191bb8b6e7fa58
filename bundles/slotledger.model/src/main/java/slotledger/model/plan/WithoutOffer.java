package slotledger.model.plan;

import java.util.Objects;

/**
 * The price of doing without a purchase line: what the best plan comes to where this offer can't be bought.
 *
 * @param offer   id of the offer
 * @param figures of the best plan without it
 */
public record WithoutOffer(String offer, Figures figures) {

    public WithoutOffer {
        Objects.requireNonNull(offer, "offer");
        Objects.requireNonNull(figures, "figures");
    }
}
