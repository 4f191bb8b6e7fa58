package slotledger.model.trade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.source.Place;

/**
 * Somebody decided what a machine's slots hold after the work.
 *
 * @param machine which machine
 * @param slots   label to content; a slot that is not named keeps what it holds
 * @param place   where it was decided
 */
public record Pin(AssetTag machine, Map<String, SlotContent> slots, Place place) {

    public Pin {
        Objects.requireNonNull(machine, "machine");
        slots = Collections.unmodifiableMap(new LinkedHashMap<>(slots));
        Objects.requireNonNull(place, "place");
    }

    /** What the machine holds after the work, when it holds this now. */
    public Population applied(Population now) {
        Population after = now;
        for (Map.Entry<String, SlotContent> slot : slots.entrySet()) {
            if (!now.contents().containsKey(slot.getKey())) {
                throw new IllegalArgumentException("The slot %s of the pin of machine %s must exist."
                        .formatted(slot.getKey(), machine));
            }
            after = after.with(slot.getKey(), slot.getValue());
        }
        return after;
    }

    /** "H-1001: DIMM1 4 GB ..., DIMM2 empty". */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(machine.toString()).append(": ");
        if (slots.isEmpty()) {
            return text.append("stays as it is").toString();
        }
        String between = "";
        for (Map.Entry<String, SlotContent> slot : slots.entrySet()) {
            text.append(between).append(slot.getKey()).append(' ').append(slot.getValue());
            between = ", ";
        }
        return text.toString();
    }
}
