package slotledger.firmware.fact;

/**
 * Something in the data that is not as it should be; what is sound beside it was read all the same.
 *
 * @param offset   of the byte or line concerned, from 0; {@link #NOWHERE} where there is no single one
 * @param where    the structure or part of the data
 * @param seen     what stands there
 * @param expected what should
 * @param nature   whether data is damaged, or sound data contradicts itself
 */
public record Problem(long offset, String where, String seen, String expected, Nature nature) {

    public static final long NOWHERE = -1;

    /** What a problem comes of. */
    public enum Nature {
        DAMAGE,
        /** Each fact by itself was read; together they can't be true. */
        CONTRADICTION
    }

    public Problem(long offset, String where, String seen, String expected) {
        this(offset, where, seen, expected, Nature.DAMAGE);
    }

    public static Problem contradiction(String where, String seen, String expected) {
        return new Problem(NOWHERE, where, seen, expected, Nature.CONTRADICTION);
    }

    /** Concerns no single byte. */
    public static Problem of(String where, String seen, String expected) {
        return new Problem(NOWHERE, where, seen, expected);
    }

    @Override
    public String toString() {
        String place = offset == NOWHERE ? where : "%s at 0x%X".formatted(where, offset);
        return "%s: %s; expected %s.".formatted(place, seen, expected);
    }
}
