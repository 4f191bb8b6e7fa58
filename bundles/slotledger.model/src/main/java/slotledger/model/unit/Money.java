package slotledger.model.unit;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Objects;

/**
 * An exact amount of money in the minor unit of its currency (cents, pence); may be negative.
 *
 * @param minor    the amount in minor units
 * @param currency the ISO 4217 currency
 */
public record Money(long minor, Currency currency) implements Comparable<Money> {

    public Money {
        Objects.requireNonNull(currency, "currency");
        if (currency.getDefaultFractionDigits() < 0) {
            throw new IllegalArgumentException("The currency (%s) must have a minor unit.".formatted(currency));
        }
    }

    public static Money zero(Currency currency) {
        return new Money(0, currency);
    }

    /** An amount such as 12.50; fails where it has more digits than the currency. */
    public static Money of(BigDecimal amount, Currency currency) {
        return new Money(
                amount.movePointRight(currency.getDefaultFractionDigits()).longValueExact(), currency);
    }

    public BigDecimal amount() {
        return BigDecimal.valueOf(minor, currency.getDefaultFractionDigits());
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, same(other).minor), currency);
    }

    public Money minus(Money other) {
        return new Money(Math.subtractExact(minor, same(other).minor), currency);
    }

    public Money times(long count) {
        return new Money(Math.multiplyExact(minor, count), currency);
    }

    public boolean isZero() {
        return minor == 0;
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(minor, same(other).minor);
    }

    /** "EUR 1234.50". */
    @Override
    public String toString() {
        return currency.getCurrencyCode() + " " + amount().toPlainString();
    }

    private Money same(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    "The currencies (%s, %s) must be the same. Maybe convert at a stated rate first."
                            .formatted(currency, other.currency));
        }
        return other;
    }
}
