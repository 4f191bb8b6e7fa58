package slotledger.model.observed;

import java.util.List;
import java.util.Objects;

/**
 * One table found in a file, and how its columns were understood.
 *
 * @param file      file name
 * @param sheet     sheet; empty in text files
 * @param headerRow 1-based row of the (last) heading
 * @param rows      rows of data
 * @param columns   each column with its heading and the field it was taken for
 */
public record TableUse(String file, String sheet, int headerRow, int rows, List<ColumnUse> columns) {

    public TableUse {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(sheet, "sheet");
        columns = List.copyOf(columns);
    }

    /**
     * One column.
     *
     * @param column  1-based
     * @param heading as written
     * @param field   field it was taken for; empty where it is not used
     */
    public record ColumnUse(int column, String heading, String field) {
        public ColumnUse {
            Objects.requireNonNull(heading, "heading");
            Objects.requireNonNull(field, "field");
        }
    }
}
