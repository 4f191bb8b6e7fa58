package slotledger.model.unit;

import java.util.Locale;

/**
 * Peak bandwidth; here kilo, mega and giga are powers of ten, as in the trade's names (PC4-21300).
 *
 * @param kilobytesPerSecond thousands of bytes per second
 */
public record Bandwidth(long kilobytesPerSecond) implements Comparable<Bandwidth> {

    public static final Bandwidth NONE = new Bandwidth(0);

    public Bandwidth {
        if (kilobytesPerSecond < 0) {
            throw new IllegalArgumentException(
                    "The bandwidth (%d) must not be negative.".formatted(kilobytesPerSecond));
        }
    }

    public double gigabytesPerSecond() {
        return kilobytesPerSecond / 1e6;
    }

    public Bandwidth times(int channels) {
        return new Bandwidth(Math.multiplyExact(kilobytesPerSecond, (long) channels));
    }

    @Override
    public int compareTo(Bandwidth other) {
        return Long.compare(kilobytesPerSecond, other.kilobytesPerSecond);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.1f GB/s", gigabytesPerSecond());
    }
}
