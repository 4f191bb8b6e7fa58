package slotledger.model.unit;

/**
 * The time from a row address to data, as SIMMs are graded by it; less is faster.
 *
 * @param nanoseconds 1 to 500
 */
public record AccessTime(int nanoseconds) implements Comparable<AccessTime> {

    private static final int MOST = 500;

    public AccessTime {
        if (nanoseconds < 1 || nanoseconds > MOST) {
            throw new IllegalArgumentException(
                    "The access time (%d ns) must be from 1 to %d ns.".formatted(nanoseconds, MOST));
        }
    }

    public static AccessTime ofNanoseconds(int nanoseconds) {
        return new AccessTime(nanoseconds);
    }

    public boolean slowerThan(AccessTime other) {
        return nanoseconds > other.nanoseconds;
    }

    /** Faster first. */
    @Override
    public int compareTo(AccessTime other) {
        return Integer.compare(nanoseconds, other.nanoseconds);
    }

    /** "60 ns". */
    @Override
    public String toString() {
        return nanoseconds + " ns";
    }
}
