package slotledger.model.trade;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Currency;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which offers may be used, and how their prices count.
 *
 * @param neededBy   last day on which modules may arrive; empty means any
 * @param rates      what other currencies are worth, by their letters in ISO 4217
 * @param tax        tax on what is bought
 * @param keepPrices whether an offer is used at its price after its last day, as an assumption
 */
public record Buying(Optional<LocalDate> neededBy, Map<String, ExchangeRate> rates, Tax tax, boolean keepPrices) {

    /** Any lead time, one currency, nothing known of tax, offers until their last day. */
    public static final Buying PLAIN = new Buying(Optional.empty(), Map.of(), Tax.UNSAID, false);

    public Buying {
        Objects.requireNonNull(neededBy, "neededBy");
        rates = Collections.unmodifiableMap(new TreeMap<>(rates));
        Objects.requireNonNull(tax, "tax");
    }

    public Optional<ExchangeRate> rate(Currency other) {
        return Optional.ofNullable(rates.get(other.getCurrencyCode()));
    }

    public Buying arrivingBy(Optional<LocalDate> day) {
        return new Buying(day, rates, tax, keepPrices);
    }
}
