package slotledger.model.observed;

import java.util.Objects;
import slotledger.model.source.Ground;
import slotledger.model.source.Place;

/**
 * What one source says of a fact.
 *
 * @param ground what kind of source it is
 * @param text   what it says; empty where it says nothing
 * @param place  where
 */
public record Testimony(Ground ground, String text, Place place) {

    public Testimony {
        Objects.requireNonNull(ground, "ground");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(place, "place");
    }

    /** "firmware table (firmware/K-17.bin): 8 GB DDR4-2666 DIMM" */
    @Override
    public String toString() {
        return "%s (%s): %s".formatted(ground.text(), place, text.isEmpty() ? "nothing" : text);
    }
}
