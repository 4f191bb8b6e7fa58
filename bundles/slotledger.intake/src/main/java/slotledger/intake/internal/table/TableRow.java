package slotledger.intake.internal.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.value.Texts;
import slotledger.model.source.Place;

/**
 * One row of a table.
 *
 * @param table  the table
 * @param number 1-based row in the sheet
 * @param cells  cells that hold something, by column
 */
public record TableRow(Table table, int number, List<Cell> cells) {

    public TableRow {
        Objects.requireNonNull(table, "table");
        cells = List.copyOf(cells);
    }

    public Optional<Cell> cell(Column column) {
        for (Cell cell : cells) {
            if (cell.column() == column.number()) {
                return cell.text().isBlank() ? Optional.empty() : Optional.of(cell);
            }
        }
        return Optional.empty();
    }

    public Optional<Cell> cell(Field field) {
        return table.column(field).flatMap(this::cell);
    }

    /** The text of a cell, outer blanks left out; empty where there is none or where it is a formula's error. */
    public String text(Column column) {
        return cell(column).filter(cell -> cell.type() != Cell.Type.ERROR).map(cell -> tidy(cell.text())).orElse("");
    }

    public String text(Field field) {
        return table.column(field).map(this::text).orElse("");
    }

    private static String tidy(String text) {
        return text.indexOf('\n') >= 0 ? text.strip() : Texts.tidy(text);
    }

    public Place place() {
        return table.place(number);
    }

    public Place place(Column column) {
        return table.place(number, column);
    }

    /** Where a field of this row stands; the row itself where the table lacks the field. */
    public Place place(Field field) {
        return table.column(field).map(this::place).orElse(place());
    }

    /** How many cells show something. */
    public long filled() {
        return cells.stream().filter(cell -> !cell.text().isBlank()).count();
    }

    /** All that is written in the row, for a finding. */
    public String shown() {
        String all = cells.stream().map(cell -> Texts.tidy(cell.text())).filter(text -> !text.isEmpty())
                .reduce((one, other) -> one + " | " + other).orElse("");
        return all.length() <= 200 ? all : all.substring(0, 200) + "...";
    }
}
