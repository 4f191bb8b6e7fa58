package slotledger.model.unit;

/**
 * An amount of memory, a whole number of kibibytes (KiB), never negative.
 *
 * <p>The trade writes KB, MB, GB and TB for the powers of 1024; {@link #toString()} does the same.
 *
 * @param kibibytes the amount in KiB (1024 bytes)
 */
public record Capacity(long kibibytes) implements Comparable<Capacity> {

    /** No memory at all. */
    public static final Capacity NONE = new Capacity(0);

    private static final long STEP = 1024;

    public Capacity {
        if (kibibytes < 0) {
            throw new IllegalArgumentException("The capacity (%d KiB) must not be negative.".formatted(kibibytes));
        }
    }

    public static Capacity ofKiB(long kibibytes) {
        return new Capacity(kibibytes);
    }

    public static Capacity ofMiB(long mebibytes) {
        return new Capacity(Math.multiplyExact(mebibytes, STEP));
    }

    public static Capacity ofGiB(long gibibytes) {
        return new Capacity(Math.multiplyExact(gibibytes, STEP * STEP));
    }

    /** Whole mebibytes, rounded down. */
    public long mebibytes() {
        return kibibytes / STEP;
    }

    /** Gibibytes, with a fraction where there is one. */
    public double gibibytes() {
        return kibibytes / (double) (STEP * STEP);
    }

    public boolean isNone() {
        return kibibytes == 0;
    }

    public Capacity plus(Capacity other) {
        return new Capacity(Math.addExact(kibibytes, other.kibibytes));
    }

    /** The difference; fails where the other one is larger. */
    public Capacity minus(Capacity other) {
        return new Capacity(kibibytes - other.kibibytes);
    }

    public Capacity times(long count) {
        return new Capacity(Math.multiplyExact(kibibytes, count));
    }

    public boolean atLeast(Capacity other) {
        return kibibytes >= other.kibibytes;
    }

    public Capacity min(Capacity other) {
        return kibibytes <= other.kibibytes ? this : other;
    }

    @Override
    public int compareTo(Capacity other) {
        return Long.compare(kibibytes, other.kibibytes);
    }

    /** As the trade writes it: "8 GB", "512 MB", "1.5 GB", "2 TB". */
    @Override
    public String toString() {
        if (kibibytes > 0 && kibibytes % (STEP * STEP * STEP) == 0) {
            return kibibytes / (STEP * STEP * STEP) + " TB";
        }
        if (kibibytes >= STEP * STEP) {
            return quarters(STEP * STEP, "GB");
        }
        return kibibytes >= STEP || kibibytes == 0 ? quarters(STEP, "MB") : kibibytes + " KB";
    }

    private String quarters(long unit, String name) {
        if (kibibytes % unit == 0) {
            return kibibytes / unit + " " + name;
        }
        if (kibibytes * 4 % unit == 0) {
            return trimmed(kibibytes / (double) unit) + " " + name;
        }
        return unit == STEP ? kibibytes + " KB" : quarters(unit / STEP, "MB");
    }

    private static String trimmed(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
