package slotledger.model.unit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * An exact share in percent, such as 19 or 7.7.
 *
 * @param value from 0 to 100, at most three digits after the point
 */
public record Percent(BigDecimal value) {

    /** So many parts make the whole; every percentage is a whole number of them. */
    public static final long PARTS = 100_000;

    private static final int DIGITS = 3;
    private static final BigDecimal WHOLE = BigDecimal.valueOf(100);

    public Percent {
        Objects.requireNonNull(value, "value");
        value = value.stripTrailingZeros();
        value = value.scale() < 0 ? value.setScale(0) : value;
        if (value.signum() < 0 || value.compareTo(WHOLE) > 0 || value.scale() > DIGITS) {
            throw new IllegalArgumentException(
                    "The percentage (%s) must be from 0 to 100, with at most three digits after the point."
                            .formatted(value));
        }
    }

    public static Percent of(int value) {
        return new Percent(BigDecimal.valueOf(value));
    }

    /** The share in parts of {@link #PARTS}. */
    public long parts() {
        return value.movePointRight(DIGITS).longValueExact();
    }

    /** This share of an amount, rounded to the minor unit, half a unit up. */
    public Money of(Money amount) {
        BigDecimal share = BigDecimal.valueOf(amount.minor()).multiply(value).movePointLeft(2);
        return new Money(share.setScale(0, RoundingMode.HALF_UP).longValueExact(), amount.currency());
    }

    public boolean isZero() {
        return value.signum() == 0;
    }

    /** "19 %". */
    @Override
    public String toString() {
        return value.toPlainString() + " %";
    }
}
