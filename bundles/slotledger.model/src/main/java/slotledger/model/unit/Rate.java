package slotledger.model.unit;

/**
 * A transfer rate by its nominal grade in megatransfers per second (MT/s), never in MHz.
 *
 * <p>Grades are printed rounded: 2666 stands for 2666.67 MT/s, since rates are multiples of 33.33 MT/s
 * (trade-wide naming; the exact value is what peak bandwidth is computed from).
 *
 * @param megatransfers the nominal grade, MT/s
 */
public record Rate(int megatransfers) implements Comparable<Rate> {

    private static final int MOST = 100_000;

    public Rate {
        if (megatransfers < 1 || megatransfers > MOST) {
            throw new IllegalArgumentException(
                    "The rate (%d MT/s) must be from 1 to %d.".formatted(megatransfers, MOST));
        }
    }

    public static Rate of(int megatransfers) {
        return new Rate(megatransfers);
    }

    /** The exact rate in kilotransfers per second: the multiple of 33.33 MT/s within 1 MT/s, else the grade itself. */
    public long kilotransfers() {
        long thirds = Math.round(megatransfers * 3 / 100.0);
        long exact = Math.round(thirds * 100_000 / 3.0);
        return Math.abs(exact - megatransfers * 1000L) < 1000 ? exact : megatransfers * 1000L;
    }

    /** The most that this many data bits can carry at this rate. */
    public Bandwidth peak(int dataBits) {
        return new Bandwidth(Math.multiplyExact(kilotransfers(), (long) dataBits) / 8);
    }

    public Rate min(Rate other) {
        return megatransfers <= other.megatransfers ? this : other;
    }

    @Override
    public int compareTo(Rate other) {
        return Integer.compare(megatransfers, other.megatransfers);
    }

    @Override
    public String toString() {
        return megatransfers + " MT/s";
    }
}
