package slotledger.model.unit;

import java.util.Locale;

/**
 * A supply voltage.
 *
 * @param millivolts thousandths of a volt, 500 to 12 000
 */
public record Voltage(int millivolts) implements Comparable<Voltage> {

    private static final int LEAST = 500;
    private static final int MOST = 12_000;

    public Voltage {
        if (millivolts < LEAST || millivolts > MOST) {
            throw new IllegalArgumentException(
                    "The voltage (%d mV) must be from %d to %d mV.".formatted(millivolts, LEAST, MOST));
        }
    }

    public static Voltage ofMillivolts(int millivolts) {
        return new Voltage(millivolts);
    }

    @Override
    public int compareTo(Voltage other) {
        return Integer.compare(millivolts, other.millivolts);
    }

    /** "1.35 V", "1.5 V", "5 V". */
    @Override
    public String toString() {
        String volts = String.format(Locale.ROOT, "%.3f", millivolts / 1000.0);
        return volts.replaceAll("\\.?0+$", "") + " V";
    }
}
