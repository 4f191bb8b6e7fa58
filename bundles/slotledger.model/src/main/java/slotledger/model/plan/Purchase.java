package slotledger.model.plan;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.trade.Offer;
import slotledger.model.unit.Money;

/**
 * One line of an order.
 *
 * @param offer   what is bought
 * @param packs   how many packs
 * @param total   exact price of all packs, tax left out; that of the offer for so many
 * @param uses    for which machines the modules are, in work order
 * @param spares  modules bought as spares by the policy
 * @param over    modules over and above uses and spares, because of the pack size
 */
public record Purchase(Offer offer, int packs, Money total, List<Use> uses, int spares, int over) {

    public Purchase {
        Objects.requireNonNull(offer, "offer");
        Objects.requireNonNull(total, "total");
        uses = List.copyOf(uses);
        int used = uses.stream().mapToInt(Use::modules).sum();
        if (packs < 1 || spares < 0 || over < 0 || used + spares + over != packs * offer.packSize()) {
            throw new IllegalArgumentException(
                    "The %d packs of %s must be used (%d), spare (%d) or over (%d)."
                            .formatted(packs, offer.id(), used, spares, over));
        }
        if (!total.equals(offer.total(packs))) {
            throw new IllegalArgumentException("The total (%s) of %d packs of %s must be that of the offer (%s)."
                    .formatted(total, packs, offer.id(), offer.total(packs)));
        }
    }

    /** So many packs at the price of the offer. */
    public Purchase(Offer offer, int packs, List<Use> uses, int spares, int over) {
        this(offer, packs, offer.total(packs), uses, spares, over);
    }

    public int modules() {
        return packs * offer.packSize();
    }

    /**
     * Modules of the line that go into one machine.
     *
     * @param machine    which machine
     * @param costCentre who pays for them; may be empty
     * @param modules    how many
     */
    public record Use(AssetTag machine, String costCentre, int modules) {
        public Use {
            Objects.requireNonNull(machine, "machine");
            Objects.requireNonNull(costCentre, "costCentre");
            if (modules < 1) {
                throw new IllegalArgumentException("The modules (%d) of a use must be at least 1.".formatted(modules));
            }
        }
    }
}
