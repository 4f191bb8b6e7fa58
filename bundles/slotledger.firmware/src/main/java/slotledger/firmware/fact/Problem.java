package slotledger.firmware.fact;

/**
 * Something in the data that is not as it should be; what is sound beside it was read all the same.
 *
 * @param offset   of the byte or line concerned, from 0; {@link #NOWHERE} where there is no single one
 * @param where    the structure or part of the data
 * @param seen     what stands there
 * @param expected what should
 */
public record Problem(long offset, String where, String seen, String expected) {

    public static final long NOWHERE = -1;

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
