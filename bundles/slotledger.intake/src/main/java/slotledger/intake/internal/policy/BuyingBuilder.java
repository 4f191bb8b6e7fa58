package slotledger.intake.internal.policy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slotledger.intake.internal.policy.PolicyDraft.WaveDraft;
import slotledger.intake.internal.value.Currencies;
import slotledger.intake.internal.value.DateText;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Written;
import slotledger.model.trade.ExchangeRate;
import slotledger.model.trade.Wave;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;

/** Reads how a policy wants to buy: days, exchange rates, tax and waves. */
final class BuyingBuilder {

    private final PolicyDraft draft;
    private final Currency currency;

    BuyingBuilder(PolicyDraft draft, Currency currency) {
        this.draft = draft;
        this.currency = currency;
    }

    Optional<LocalDate> date(Written entry) {
        DateText date = DateText.read(entry.text());
        if (date.value().isEmpty()) {
            draft.report(Doubt.error("date-not-understood", date.ambiguous()
                    ? "This date can be read in two ways; it was not used." : "This is no date; it was not used.",
                    "a date such as 2027-01-15", "Write the date as year-month-day."), entry);
        }
        return date.value();
    }

    Optional<Percent> tax(Written entry) {
        String text = entry.text().replace("%", "").strip().replace(',', '.');
        if (!text.matches("\\d{1,2}(\\.\\d{1,3})?")) {
            draft.report(Doubt.error("not-a-percentage",
                    "This is not a percentage from 0 to 99.999; tax was left unknown.", "a percentage such as 19",
                    "Correct it."), entry);
            return Optional.empty();
        }
        return Optional.of(new Percent(new BigDecimal(text)));
    }

    boolean keeps(Written entry) {
        boolean keeps = Texts.key(entry.text()).equals("keep");
        if (!keeps && !Texts.key(entry.text()).equals(Texts.key("leave out"))) {
            draft.report(Doubt.error("choice-not-understood",
                    "It is not clear what becomes of offers after their last day; they are left out.",
                    "keep, or leave out", "Write \"keep\" to reckon with their last price."), entry);
        }
        return keeps;
    }

    Map<String, ExchangeRate> rates(Optional<LocalDate> day) {
        Map<String, ExchangeRate> rates = new LinkedHashMap<>();
        draft.rates.forEach((name, entry) -> {
            Optional<Currency> other = name.strip().length() == 3 ? Currencies.in(name.toUpperCase(Locale.ROOT))
                    : Optional.empty();
            boolean isNumber = entry.text().strip().matches("\\d{1,9}(\\.\\d{1,12})?")
                    && new BigDecimal(entry.text().strip()).signum() > 0;
            if (other.isEmpty() || other.get().equals(currency) || !isNumber) {
                draft.report(Doubt.error("rate-not-understood", other.isPresent() && !isNumber
                        ? "This is not an exchange rate; it was not used."
                        : "\"%s\" is not another currency; its rate was not used.".formatted(name),
                        "what one unit is worth in %s, such as \"USD: 0.92\"".formatted(currency.getCurrencyCode()),
                        "Correct it; write a point before the fraction."), entry);
            } else {
                rates.put(other.get().getCurrencyCode(), new ExchangeRate(new BigDecimal(entry.text().strip()), day));
            }
        });
        return rates;
    }

    /** The waves in the order of the file; one that is not clear, or not later than the one before, is left out. */
    List<Wave> waves(Function<Written, Optional<Money>> money, Optional<Written> neededBy) {
        List<Wave> waves = new ArrayList<>();
        for (WaveDraft wave : draft.waves) {
            Written name = wave.entries().get(PolicyKey.WAVE_NAME);
            Optional<LocalDate> date = entry(wave, PolicyKey.WAVE_DATE).flatMap(this::date);
            boolean isClear = name != null && !name.text().isBlank() && date.isPresent();
            if (!isClear || !waves.isEmpty() && !date.get().isAfter(waves.get(waves.size() - 1).date())) {
                draft.report(isClear ? Doubt.error("wave-order", "This wave is not later than the one before; it was"
                        + " left out.", "waves in the order of their dates", "Sort the waves by date.")
                        : Doubt.error("wave-incomplete", "A wave needs a name and a date; it was left out.",
                        "name and date", "Complete it."), wave.place(), name == null ? "" : name.text());
                continue;
            }
            Map<String, Money> centres = new LinkedHashMap<>();
            wave.costCentres().forEach((centre, entry) ->
                    money.apply(entry).ifPresent(amount -> centres.put(centre, amount)));
            Optional<LocalDate> needed = entry(wave, PolicyKey.WAVE_NEEDED_BY).flatMap(this::date)
                    .or(() -> neededBy.flatMap(entry -> DateText.read(entry.text()).value())
                            .filter(day -> !day.isBefore(date.get())));
            waves.add(new Wave(Texts.tidy(name.text()), date.get(),
                    entry(wave, PolicyKey.WAVE_BUDGET).flatMap(money), centres, needed));
        }
        return waves;
    }

    private static Optional<Written> entry(WaveDraft wave, PolicyKey key) {
        return Optional.ofNullable(wave.entries().get(key)).filter(entry -> !entry.text().isBlank());
    }
}
