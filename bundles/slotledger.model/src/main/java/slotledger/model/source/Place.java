package slotledger.model.source;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * A place in a file a person can go to. An empty text or number means that part does not apply.
 *
 * @param file   file name as the user gave it
 * @param sheet  name of the sheet; empty in text files
 * @param row    1-based row or line
 * @param column 1-based column
 * @param header the column's heading; may be empty
 */
public record Place(String file, String sheet, OptionalInt row, OptionalInt column, String header) {

    /** No place in any file. */
    public static final Place NOWHERE = new Place("", "", OptionalInt.empty(), OptionalInt.empty(), "");

    private static final int LETTERS = 26;

    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(sheet, "sheet");
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(column, "column");
        Objects.requireNonNull(header, "header");
    }

    public static Place ofFile(String file) {
        return new Place(file, "", OptionalInt.empty(), OptionalInt.empty(), "");
    }

    public static Place ofRow(String file, String sheet, int row) {
        return new Place(file, sheet, OptionalInt.of(row), OptionalInt.empty(), "");
    }

    public Place atColumn(int number, String heading) {
        return new Place(file, sheet, row, OptionalInt.of(number), heading);
    }

    /** Column letters as a spreadsheet shows them: 1 is A, 27 is AA. */
    public static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.toString();
    }

    /**
     * "fleet.xlsx, sheet Lab PCs, row 14, column F (RAM)" in a table; "board.yaml, line 14, column 6" in running text,
     * which has neither sheets nor headings.
     */
    @Override
    public String toString() {
        StringBuilder line = new StringBuilder(file);
        if (!sheet.isEmpty()) {
            line.append(", sheet ").append(sheet);
        }
        row.ifPresent(number -> line.append(sheet.isEmpty() ? ", line " : ", row ").append(number));
        boolean table = !sheet.isEmpty() || !header.isEmpty();
        column.ifPresent(number -> line.append(", column ").append(table ? letters(number) : String.valueOf(number)));
        if (!header.isEmpty()) {
            line.append(" (").append(header).append(')');
        }
        return line.toString();
    }
}
