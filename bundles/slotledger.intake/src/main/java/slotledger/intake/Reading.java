package slotledger.intake;

import java.util.List;
import java.util.Objects;
import slotledger.model.finding.Finding;

/**
 * What was read, how its columns were understood, and what is doubtful.
 *
 * @param <T>      what was read
 * @param value    the value
 * @param columns  for each table found, how each column was understood
 * @param findings in file order
 */
public record Reading<T>(T value, List<TableUse> columns, List<Finding> findings) {

    public Reading {
        Objects.requireNonNull(value, "value");
        columns = List.copyOf(columns);
        findings = List.copyOf(findings);
    }

    /**
     * One table found in a file.
     *
     * @param file      file name
     * @param sheet     sheet; empty in text files
     * @param headerRow 1-based row of the (last) heading
     * @param rows      rows of data
     * @param columns   each column with its heading and the field it was taken for
     */
    public record TableUse(String file, String sheet, int headerRow, int rows, List<ColumnUse> columns) {
        public TableUse {
            columns = List.copyOf(columns);
        }
    }

    /**
     * One column.
     *
     * @param column  1-based
     * @param heading as written
     * @param field   field it was taken for; empty where it is not used
     */
    public record ColumnUse(int column, String heading, String field) {}
}
