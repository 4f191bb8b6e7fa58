package slotledger.model.delivery;

import java.util.Objects;
import java.util.OptionalInt;
import slotledger.model.source.Place;

/**
 * One line of a list of what arrived.
 *
 * @param supplier who delivered; empty where the list doesn't say
 * @param part     the supplier's part number, or the id of the offer
 * @param packs    how many packs arrived; empty where modules were counted
 * @param modules  how many modules or fillers arrived; empty where packs were counted
 * @param unusable how many of the modules are dead or not what was ordered
 * @param place    where it was read
 */
public record Receipt(
        String supplier, String part, OptionalInt packs, OptionalInt modules, int unusable, Place place) {

    public Receipt {
        Objects.requireNonNull(supplier, "supplier");
        Objects.requireNonNull(packs, "packs");
        Objects.requireNonNull(modules, "modules");
        Objects.requireNonNull(place, "place");
        if (part.isBlank() || packs.isPresent() == modules.isPresent() || unusable < 0) {
            throw new IllegalArgumentException(
                    "A receipt must name a part and count either packs or modules, and none below 0.");
        }
    }
}
