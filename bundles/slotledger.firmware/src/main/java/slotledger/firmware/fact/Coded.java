package slotledger.firmware.fact;

import java.util.Optional;

/** A meaning that a standard gives a number. */
public interface Coded {

    int code();

    String text();

    /** Whether the standard's meaning is that nobody knows. */
    default boolean isUnknown() {
        return false;
    }

    /** The meaning of a number among all there are. */
    static <E extends Coded> Optional<E> find(E[] values, int code) {
        for (E value : values) {
            if (value.code() == code) {
                return Optional.of(value);
            }
        }
        return Optional.empty();
    }
}
