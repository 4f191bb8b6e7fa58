package slotledger.model.trade;

import java.util.Objects;

/**
 * Something people don't want, or would rather have.
 *
 * @param attitude how they stand to it
 * @param about    what is spoken of
 * @param name     a kind in the words of its label, the name of a supplier, or that of a maker
 */
public record Taste(Attitude attitude, About about, String name) {

    /** How people stand to something. */
    public enum Attitude { FORBID, PREFER }

    /** What is spoken of. */
    public enum About { KIND, SUPPLIER, MAKER }

    public Taste {
        Objects.requireNonNull(attitude, "attitude");
        Objects.requireNonNull(about, "about");
        if (name.isBlank()) {
            throw new IllegalArgumentException("The name of what is forbidden or preferred must not be blank.");
        }
    }
}
