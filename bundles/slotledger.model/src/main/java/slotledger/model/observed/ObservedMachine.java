package slotledger.model.observed;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Whereabouts;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;

/**
 * One machine as an inventory describes it, before its board is known. Empty means the inventory doesn't say.
 *
 * @param tag             asset tag, or the serial number where there is no tag
 * @param serial          serial number
 * @param maker           maker as written
 * @param model           model as written
 * @param where           site and room
 * @param costCentre      who pays
 * @param role            what it is used for
 * @param operatingSystem as written
 * @param processor       as written
 * @param processors      how many processors
 * @param redundancy      whether memory is mirrored or kept as spare, as written
 * @param slotCount       how many slots the inventory says there are
 * @param total           total memory the inventory says is installed
 * @param slots           what is said of single slots, in the inventory's order
 * @param place           the row
 */
public record ObservedMachine(
        AssetTag tag,
        String serial,
        String maker,
        String model,
        Whereabouts where,
        String costCentre,
        String role,
        String operatingSystem,
        String processor,
        OptionalInt processors,
        String redundancy,
        OptionalInt slotCount,
        Optional<Capacity> total,
        List<ObservedSlot> slots,
        Place place) {

    public ObservedMachine {
        Objects.requireNonNull(tag, "tag");
        Objects.requireNonNull(serial, "serial");
        Objects.requireNonNull(maker, "maker");
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(costCentre, "costCentre");
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(operatingSystem, "operatingSystem");
        Objects.requireNonNull(processor, "processor");
        Objects.requireNonNull(processors, "processors");
        Objects.requireNonNull(redundancy, "redundancy");
        Objects.requireNonNull(slotCount, "slotCount");
        Objects.requireNonNull(total, "total");
        slots = List.copyOf(slots);
        Objects.requireNonNull(place, "place");
    }
}
