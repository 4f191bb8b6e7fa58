package slotledger.intake.internal.offer;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Currencies;
import slotledger.intake.internal.value.DecimalMark;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.NumberText;
import slotledger.model.finding.Finding;
import slotledger.model.unit.Money;

/** Reads amounts of money; decides about 1.234 by the other amounts of the table. */
final class MoneyReader {

    private final DecimalMark mark;
    private final Optional<Currency> ofTitles;
    private final Consumer<Finding> findings;

    MoneyReader(Table table, List<TableRow> rows, Consumer<Finding> findings) {
        this.mark = evidence(table, rows);
        this.ofTitles = Currencies.in(String.join(" ", table.titles()) + " " + table.sheet());
        this.findings = findings;
    }

    private static boolean isMoney(Column column) {
        return column.meaning().isPresent() && switch (column.meaning().get().field()) {
            case PRICE, PRICE_FROM, SHIPPING, FREE_FROM, MINIMUM_ORDER -> true;
            default -> false;
        };
    }

    private static DecimalMark evidence(Table table, List<TableRow> rows) {
        boolean point = false;
        boolean comma = false;
        for (Column column : table.columns()) {
            for (TableRow row : isMoney(column) ? rows : List.<TableRow>of()) {
                Optional<Cell> cell = row.cell(column).filter(known -> known.type() == Cell.Type.TEXT);
                DecimalMark shown = cell.map(text ->
                        NumberText.read(amount(text.text()), DecimalMark.UNKNOWN).evidence())
                        .orElse(DecimalMark.UNKNOWN);
                point |= shown == DecimalMark.POINT;
                comma |= shown == DecimalMark.COMMA;
            }
        }
        return point == comma ? DecimalMark.UNKNOWN : point ? DecimalMark.POINT : DecimalMark.COMMA;
    }

    /** "12,50 netto" and "12.-" are amounts too. */
    private static String amount(String text) {
        return Currencies.without(text).replaceAll("(?i)\\s*(?:net(?:to)?|HT|excl\\.?.*|zzgl\\.?.*|plus .*)$", "")
                .replaceAll("[.,]\\s?-+$", "").strip();
    }

    /** The amount in a column; empty, with a finding, where it can't be told. */
    Optional<Money> read(TableRow row, Column column) {
        Optional<Cell> cell = row.cell(column);
        if (cell.isEmpty() || cell.get().type() == Cell.Type.ERROR) {
            return Optional.empty();
        }
        String text = cell.get().text();
        if (cell.get().type() == Cell.Type.DATE) {
            report(Doubt.error("date-for-number",
                    "A date stands where a price should; perhaps a number such as 4.8 was typed.",
                    "an amount of money", "Format the column as number and type it again."), row, column, text);
            return Optional.empty();
        }
        DecimalMark known = cell.get().type() == Cell.Type.NUMBER ? DecimalMark.POINT : mark;
        NumberText number = NumberText.read(amount(text), known);
        if (number.ambiguous()) {
            report(Doubt.error("amount-ambiguous",
                    "This can be read in two ways, and no other amount of the sheet shows "
                    + "which sign marks the fraction.", "an amount such as 1234.00 or 1.234,00",
                    "Write two digits after the decimal mark."), row, column, text);
            return Optional.empty();
        }
        if (number.value().isEmpty() || number.value().get().signum() < 0) {
            report(Doubt.error("amount-not-understood", "This is not an amount of money.", "an amount such as 12.50",
                    "Correct the cell."), row, column, text);
            return Optional.empty();
        }
        Optional<Currency> currency = currency(row, column, text);
        if (currency.isEmpty()) {
            report(Doubt.error("currency-missing", "It is not said which currency this is.",
                    "a currency in the cell, the heading, a column of its own or above the table",
                    "Write the currency, such as EUR, into the heading."), row, column, text);
            return Optional.empty();
        }
        return money(number.value().get(), currency.get(), row, column, text);
    }

    private Optional<Money> money(BigDecimal amount, Currency currency, TableRow row, Column column, String text) {
        int digits = currency.getDefaultFractionDigits();
        BigDecimal rounded = amount.setScale(digits, RoundingMode.HALF_UP);
        if (rounded.compareTo(amount) != 0) {
            report(Doubt.note("amount-rounded", "The amount was rounded to %s %s."
                    .formatted(currency.getCurrencyCode(), rounded.toPlainString()),
                    "at most %d digits after the decimal mark".formatted(digits), "Check the price."), row, column,
                            text);
        }
        if (rounded.precision() - rounded.scale() > 12) {
            report(Doubt.error("amount-not-understood", "No amount is that large.", "an amount such as 12.50",
                    "Correct the cell."), row, column, text);
            return Optional.empty();
        }
        return Optional.of(Money.of(rounded, currency));
    }

    private Optional<Currency> currency(TableRow row, Column column, String text) {
        return Currencies.in(text).or(() -> Currencies.in(row.text(Field.CURRENCY)))
                .or(() -> Currencies.in(column.heading()))
                .or(() -> row.table().column(Field.PRICE).flatMap(price -> Currencies.in(price.heading())))
                .or(() -> ofTitles);
    }

    private void report(Doubt doubt, TableRow row, Column column, String text) {
        findings.accept(doubt.at(row.place(column), text));
    }
}
