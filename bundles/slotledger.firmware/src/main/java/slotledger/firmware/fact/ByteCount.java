package slotledger.firmware.fact;

/**
 * A number of bytes; nothing for an empty slot.
 *
 * @param bytes not negative
 */
public record ByteCount(long bytes) implements Comparable<ByteCount> {

    public static final ByteCount NOTHING = new ByteCount(0);

    private static final String[] UNITS = {"bytes", "kB", "MB", "GB", "TB", "PB", "EB"};
    private static final int STEP_BITS = 10;

    public ByteCount {
        if (bytes < 0) {
            throw new IllegalArgumentException("The count (%d) must not be negative.".formatted(bytes));
        }
    }

    /**
     * Counts units of 2^shift bytes; what no signed 64-bit number holds becomes the largest that it does.
     *
     * @param count not negative
     */
    public static ByteCount ofShifted(long count, int shift) {
        return new ByteCount(count > Long.MAX_VALUE >> shift ? Long.MAX_VALUE : count << shift);
    }

    public static ByteCount ofKib(long count) {
        return ofShifted(count, STEP_BITS);
    }

    public static ByteCount ofMib(long count) {
        return ofShifted(count, 2 * STEP_BITS);
    }

    public boolean isNothing() {
        return bytes == 0;
    }

    /** Both together, or the largest number there is. */
    public ByteCount plus(ByteCount other) {
        return new ByteCount(bytes > Long.MAX_VALUE - other.bytes ? Long.MAX_VALUE : bytes + other.bytes);
    }

    @Override
    public int compareTo(ByteCount other) {
        return Long.compare(bytes, other.bytes);
    }

    /** The largest binary unit that needs no fraction: "8 GB", "1536 MB", "0 bytes". */
    @Override
    public String toString() {
        long count = bytes;
        int unit = 0;
        while (count != 0 && count % (1 << STEP_BITS) == 0 && unit < UNITS.length - 1) {
            count >>= STEP_BITS;
            unit++;
        }
        return count + " " + UNITS[unit];
    }
}
