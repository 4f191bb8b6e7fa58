package slotledger.intake.internal.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.source.Place;

/**
 * A table found in a sheet.
 *
 * @param file      file name as the user gave it
 * @param sheet     sheet; empty in text files
 * @param headerRow 1-based row of the last heading
 * @param columns   every column with a heading
 * @param titles    texts above the headings
 */
public record Table(String file, String sheet, int headerRow, List<Column> columns, List<String> titles) {

    public Table {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(sheet, "sheet");
        columns = List.copyOf(columns);
        titles = List.copyOf(titles);
    }

    public Optional<Column> column(Field field) {
        return columns.stream().filter(column -> is(column, field)).findFirst();
    }

    /** All columns of a field that repeats, left to right. */
    public List<Column> columns(Field field) {
        return columns.stream().filter(column -> is(column, field)).toList();
    }

    public boolean has(Field field) {
        return column(field).isPresent();
    }

    private static boolean is(Column column, Field field) {
        return column.meaning().isPresent() && column.meaning().get().field() == field;
    }

    /** Whether cells have no types of their own here. */
    public boolean isTextFile() {
        return sheet.isEmpty();
    }

    public Place place(int row) {
        return Place.ofRow(file, sheet, row);
    }

    public Place place(int row, Column column) {
        return place(row).atColumn(column.number(), column.heading());
    }

    public Place headerPlace() {
        return place(headerRow);
    }
}
