package slotledger.intake.internal.fleet;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.DecimalMark;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.NumberText;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.model.finding.Finding;

/** Reads single cells of a row and says what is wrong with them. */
public final class CellReader {

    private static final int LONGEST_TAG = 64;
    private static final int LONGEST_TEXT = 200;

    private final Consumer<Finding> findings;
    /** Texts that come again and again are kept once. */
    private final Map<String, String> pool = new HashMap<>();
    private static final int POOL = 50_000;

    public CellReader(Consumer<Finding> findings) {
        this.findings = findings;
    }

    /** Reports every cell of a used column in which a formula failed. */
    public void reportErrors(TableRow row) {
        for (Column column : row.table().columns()) {
            Optional<Cell> cell = row.cell(column);
            if (column.meaning().isPresent() && cell.isPresent() && cell.get().type() == Cell.Type.ERROR) {
                findings.accept(Doubt.warning("formula-error", "A formula failed here; the cell was taken for empty.",
                        "a value", "Correct the formula, or type the value.").at(row.place(column), cell.get().text()));
            }
        }
    }

    /** A text; empty where the cell says nothing, such as "n/a". */
    public String text(TableRow row, Field field) {
        String text = row.text(field);
        if (text.isEmpty() || Words.sayNothing(text) || Texts.withoutInvisible(text).isBlank()) {
            return "";
        }
        Column column = row.table().column(field).orElseThrow();
        if (row.cell(column).orElseThrow().type() == Cell.Type.DATE && field != Field.REMARK) {
            findings.accept(Doubt.warning("date-for-text",
                    "A date stands here; perhaps the spreadsheet program made it of "
                    + "something else that was typed.", "a text", "Format the column as text and type it again.")
                    .at(row.place(column), text));
        }
        hygiene(row, column, text, field == Field.ASSET_TAG || field == Field.SERIAL ? LONGEST_TAG : LONGEST_TEXT);
        return pooled(text);
    }

    private void hygiene(TableRow row, Column column, String text, int longest) {
        if (Texts.hasInvisible(text)) {
            findings.accept(Doubt.warning("invisible-characters",
                    "The text holds characters that can't be seen, such as writing direction marks; it was kept.",
                    "visible characters", "Type the text again.").at(row.place(column), Texts.withoutInvisible(text)));
        }
        if (text.length() > longest) {
            findings.accept(Doubt.warning("overlong-text", "The text is %d characters long; it was kept as it is."
                    .formatted(text.length()), "at most %d characters".formatted(longest), "Shorten it.")
                    .at(row.place(column), text.substring(0, longest) + "..."));
        }
    }

    private String pooled(String text) {
        String known = pool.putIfAbsent(text, text);
        if (pool.size() > POOL) {
            pool.clear();
        }
        return known == null ? text : known;
    }

    /** A whole number from 0 to 1000; empty where the cell says nothing or something else. */
    public OptionalInt count(TableRow row, Field field) {
        Optional<Column> column = row.table().column(field);
        Optional<Cell> cell = column.flatMap(row::cell);
        if (cell.isEmpty() || cell.get().type() == Cell.Type.ERROR || Words.sayNothing(cell.get().text())) {
            return OptionalInt.empty();
        }
        if (isDate(row, column.get())) {
            return OptionalInt.empty();
        }
        Optional<BigDecimal> number = NumberText.read(cell.get().text(), DecimalMark.UNKNOWN).value();
        if (number.isEmpty() || number.get().stripTrailingZeros().scale() > 0
                || number.get().signum() < 0 || number.get().compareTo(BigDecimal.valueOf(1000)) > 0) {
            findings.accept(Doubt.warning("not-a-count", "This is not a whole number from 0 to 1000; it was not used.",
                    "a whole number", "Correct it, or leave the cell empty.")
                            .at(row.place(column.get()), cell.get().text()));
            return OptionalInt.empty();
        }
        numberAsText(row, column.get());
        return OptionalInt.of(number.get().intValueExact());
    }

    /** Whether a date stands where a number or a memory size should; says so. */
    public boolean isDate(TableRow row, Column column) {
        Optional<Cell> cell = row.cell(column).filter(known -> known.type() == Cell.Type.DATE);
        cell.ifPresent(date -> {
            String[] parts = date.text().split("\\D");
            String typed = parts.length >= 3 && parts[1].matches("\\d{2}") && parts[2].matches("\\d{2}")
                    ? "%d-%d or %d/%d".formatted(Integer.parseInt(parts[1]), Integer.parseInt(parts[2]),
                            Integer.parseInt(parts[2]), Integer.parseInt(parts[1]))
                    : "something else";
            findings.accept(Doubt.warning("date-for-number",
                    "A date stands here; perhaps %s was typed and the spreadsheet program made a date of it."
                            .formatted(typed), "a number or a memory size",
                    "Format the column as text and type it again.").at(row.place(column), date.text()));
        });
        return cell.isPresent();
    }

    /** Says where a number of a spreadsheet is stored as text; it is used all the same. */
    public void numberAsText(TableRow row, Column column) {
        Optional<Cell> cell = row.cell(column).filter(known -> known.type() == Cell.Type.TEXT);
        if (!row.table().isTextFile() && cell.isPresent() && cell.get().text().strip().matches("\\d+([.,]\\d+)?")) {
            findings.accept(Doubt.note("number-as-text", "This number is stored as text; it was used as a number.",
                    "a number", "Nothing needs to be done; sums in the sheet leave it out.")
                    .at(row.place(column), cell.get().text()));
        }
    }
}
