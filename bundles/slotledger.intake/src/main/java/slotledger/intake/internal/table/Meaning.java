package slotledger.intake.internal.table;

import java.util.Objects;

/**
 * What a heading means.
 *
 * @param field the field
 * @param label which one, where a field repeats: the slot's name, or the quantity a price holds from; else empty
 */
public record Meaning(Field field, String label) {

    public Meaning {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(label, "label");
    }

    /** "asset-tag", "slot-size Slot 1", "price-from 25". */
    @Override
    public String toString() {
        return label.isEmpty() ? field.id() : field.id() + " " + label;
    }
}
