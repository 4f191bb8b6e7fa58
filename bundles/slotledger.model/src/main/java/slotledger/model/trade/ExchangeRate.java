package slotledger.model.trade;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Money;

/**
 * What one unit of another currency is worth in the currency of a policy, as somebody stated it.
 *
 * @param rate units of the policy's currency for one unit of the other, more than zero
 * @param day  day of the rate
 */
public record ExchangeRate(BigDecimal rate, Optional<LocalDate> day) {

    public ExchangeRate {
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(day, "day");
        rate = rate.stripTrailingZeros();
        rate = rate.scale() < 0 ? rate.setScale(0) : rate;
        if (rate.signum() <= 0) {
            throw new IllegalArgumentException("The exchange rate (%s) must be more than zero.".formatted(rate));
        }
    }

    /** An amount turned into another currency and rounded to its minor unit, half a unit up. */
    public Money convert(Money amount, Currency into) {
        BigDecimal exact = amount.amount().multiply(rate).setScale(into.getDefaultFractionDigits(),
                RoundingMode.HALF_UP);
        return Money.of(exact, into);
    }

    /** "0.92 of 2026-11-02". */
    @Override
    public String toString() {
        return rate.toPlainString() + day.map(known -> " of " + known).orElse("");
    }
}
