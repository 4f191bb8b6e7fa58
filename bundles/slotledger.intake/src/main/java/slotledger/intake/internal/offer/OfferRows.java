package slotledger.intake.internal.offer;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.DateText;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.model.finding.Finding;
import slotledger.model.unit.Money;

/** Makes offer lines of the rows of one table. */
final class OfferRows {

    /** 3 | 3 days | 2-3 Tage | 1 week | 2 Wochen | 48 h. */
    private static final Pattern DAYS =
            Pattern.compile("(?:\\d{1,3}\\s?(?:-|to|bis|à|a)\\s?)?(\\d{1,3})\\s*(\\p{L}*)\\.?.*");
    /** 120 | >100 | 100+ | 250 pcs. */
    private static final Pattern STOCK =
            Pattern.compile("[>~]?\\s?(\\d{1,7})\\s?\\+?\\s?(?:pcs|pieces|packs|stk|stück|st|szt|pz|u)?\\.?");
    private static final int LARGEST_PACK = 64;

    private final KindReader kinds;
    private final MoneyReader money;
    private final Consumer<Finding> findings;
    private final PriceExtras extras;

    OfferRows(KindReader kinds, MoneyReader money, Consumer<Finding> findings) {
        this.kinds = kinds;
        this.money = money;
        this.findings = findings;
        this.extras = new PriceExtras(findings);
    }

    /** The supplier of a row: its own column, the one named above the table, or the sheet. */
    static String supplier(TableRow row) {
        String own = row.text(Field.SUPPLIER);
        if (!own.isEmpty()) {
            return own;
        }
        Table table = row.table();
        for (String title : table.titles()) {
            Matcher named = Pattern.compile(
                    "(?i)(?:supplier|vendor|lieferant|fournisseur|proveedor|fornitore|leverancier|dostawca)"
                    + "[\\s:|]+(.+)").matcher(title);
            if (named.matches()) {
                return named.group(1).strip();
            }
        }
        return table.has(Field.SUPPLIER) ? "" : table.isTextFile() ? withoutSuffix(table.file()) : table.sheet();
    }

    private static String withoutSuffix(String file) {
        return file.replaceAll("\\.[A-Za-z]+$", "");
    }

    /** The line; empty, with a finding, where the row can't be used. */
    Optional<OfferLine> read(TableRow row) {
        String supplier = supplier(row);
        if (supplier.isBlank()) {
            findings.accept(Doubt.error("supplier-missing", "It is not said who sells this; the row was left out.",
                    "a supplier", "Write the supplier.").at(row.place(Field.SUPPLIER), row.shown()));
            return Optional.empty();
        }
        Optional<KindReader.Read> kind = kinds.read(row);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        SortedMap<Integer, Money> prices = prices(row);
        if (prices.isEmpty()) {
            findings.accept(Doubt.error("price-missing", "There is no price that can be used; the row was left out.",
                    "a price", "Write the price.").at(row.place(Field.PRICE), row.shown()));
            return Optional.empty();
        }
        OptionalInt pack = packSize(row, kind.get().count());
        if (pack.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new OfferLine(row, Texts.tidy(supplier), row.text(Field.PART), maker(row),
                kind.get().piece(), pack.getAsInt(), prices, extras.rule(row), extras.tax(row), stock(row),
                leadDays(row), date(row, Field.PRICE_DATE), date(row, Field.VALID_UNTIL)));
    }

    private static Optional<String> maker(TableRow row) {
        return Optional.of(Texts.tidy(row.text(Field.MAKER))).filter(text -> !Words.sayNothing(text));
    }

    private SortedMap<Integer, Money> prices(TableRow row) {
        SortedMap<Integer, Money> prices = new TreeMap<>();
        for (Column column : row.table().columns(Field.PRICE_FROM)) {
            int from = Integer.parseInt(column.meaning().orElseThrow().label());
            money.read(row, column).ifPresent(price -> prices.put(Math.max(1, from), price));
        }
        int first = 1;
        String quantity = row.text(Field.FROM_QUANTITY).replaceAll("[^0-9].*$", "");
        if (!quantity.isEmpty() && quantity.length() < 7) {
            first = Math.max(1, Integer.parseInt(quantity));
        }
        Optional<Money> price = row.table().column(Field.PRICE).flatMap(column -> money.read(row, column));
        if (price.isPresent()) {
            prices.put(first, price.get());
        }
        boolean oneCurrency = prices.values().stream().map(Money::currency).distinct().count() <= 1;
        if (!oneCurrency) {
            findings.accept(Doubt.error("currencies-mixed", "The prices of this row are in several currencies.",
                    "one currency", "Correct the prices.").at(row.place(Field.PRICE), row.shown()));
            return new TreeMap<>();
        }
        return prices;
    }

    private OptionalInt packSize(TableRow row, int inText) {
        String text = row.text(Field.PACK_SIZE);
        if (text.isEmpty() || Words.sayNothing(text)) {
            return OptionalInt.of(inText);
        }
        Matcher number = Pattern.compile("\\D*(\\d{1,3})\\D*").matcher(text);
        int pack = number.matches() ? Integer.parseInt(number.group(1)) : 0;
        if (pack < 1 || pack > LARGEST_PACK || inText > 1 && pack > 1 && pack != inText) {
            findings.accept(Doubt.error("pack-size", inText > 1 && pack > 1
                    ? "The text says %d modules a pack, the column %d; the row was left out.".formatted(inText, pack)
                    : "This is no number of modules a pack; the row was left out.",
                    "how many modules are in a pack, such as 2", "Correct the cell.")
                            .at(row.place(Field.PACK_SIZE), text));
            return OptionalInt.empty();
        }
        return OptionalInt.of(Math.max(pack, inText));
    }

    private OptionalInt stock(TableRow row) {
        String text = row.text(Field.STOCK);
        if (text.isEmpty() || Words.PLENTY.says(text)) {
            return OptionalInt.empty();
        }
        if (Words.NONE_LEFT.says(text)) {
            return OptionalInt.of(0);
        }
        Matcher number = STOCK.matcher(Texts.fold(text));
        if (number.matches()) {
            return OptionalInt.of(Integer.parseInt(number.group(1)));
        }
        findings.accept(Doubt.warning("stock-not-understood", "The stock was not understood; it was taken for none.",
                "a number of packs", "Correct the cell.").at(row.place(Field.STOCK), text));
        return OptionalInt.of(0);
    }

    private OptionalInt leadDays(TableRow row) {
        String text = row.text(Field.LEAD_TIME);
        if (text.isEmpty() || Words.sayNothing(text)) {
            return OptionalInt.empty();
        }
        if (Words.AT_ONCE.says(text)) {
            return OptionalInt.of(0);
        }
        Matcher days = DAYS.matcher(Texts.fold(text).replace('–', '-'));
        if (!days.matches()) {
            findings.accept(Doubt.note("lead-time-not-understood",
                    "The lead time was not understood; it is left unknown.",
                    "a number of days", "Correct the cell.").at(row.place(Field.LEAD_TIME), text));
            return OptionalInt.empty();
        }
        int number = Integer.parseInt(days.group(1));
        String unit = days.group(2);
        if (unit.matches(
                "w|wk|wks|week|weeks|woche|wochen|semaine|semaines|"
                + "semana|semanas|settimana|settimane|weken|tydzien|tygodnie|tygodni")) {
            return OptionalInt.of(number * 7);
        }
        if (unit.matches("h|hrs?|hours?|std|stunden|heures|horas|ore|uur|godzin")) {
            return OptionalInt.of((number + 23) / 24);
        }
        return OptionalInt.of(number);
    }

    private Optional<LocalDate> date(TableRow row, Field field) {
        String text = row.text(field);
        if (text.isEmpty() || Words.sayNothing(text)) {
            return Optional.empty();
        }
        DateText date = DateText.read(text);
        if (date.value().isEmpty()) {
            findings.accept(Doubt.warning("date-not-understood", date.ambiguous()
                    ? "This date can be read in two ways; it is left unknown."
                    : "This is no date; it is left unknown.", "a date such as 2026-03-31",
                            "Write the date as year-month-day.")
                    .at(row.place(field), text));
        }
        return date.value();
    }
}
