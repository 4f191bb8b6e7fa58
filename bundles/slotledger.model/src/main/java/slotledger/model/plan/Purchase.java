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
 * @param perPack price of one pack at this quantity
 * @param uses    for which machines the modules are, in work order
 * @param spares  modules bought as spares by the policy
 * @param over    modules over and above uses and spares, because of the pack size
 */
public record Purchase(Offer offer, int packs, Money perPack, List<Use> uses, int spares, int over) {

    public Purchase {
        Objects.requireNonNull(offer, "offer");
        Objects.requireNonNull(perPack, "perPack");
        uses = List.copyOf(uses);
        int used = uses.stream().mapToInt(Use::modules).sum();
        if (packs < 1 || spares < 0 || over < 0 || used + spares + over != packs * offer.packSize()) {
            throw new IllegalArgumentException(
                    "The %d packs of %s must be used (%d), spare (%d) or over (%d)."
                            .formatted(packs, offer.id(), used, spares, over));
        }
    }

    public int modules() {
        return packs * offer.packSize();
    }

    public Money total() {
        return perPack.times(packs);
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
