package slotledger.model.observed;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.SlotContent;
import slotledger.model.source.Place;

/**
 * What an inventory says is in one slot.
 *
 * @param label   the slot as the inventory names it; empty where it only counts modules
 * @param content what is in it
 * @param part    maker's part number; empty means unknown
 * @param serial  module serial number; empty means unknown
 * @param place   where it is written
 */
public record ObservedSlot(Optional<String> label, SlotContent content, String part, String serial, Place place) {

    public ObservedSlot {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(content, "content");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(serial, "serial");
        Objects.requireNonNull(place, "place");
    }
}
