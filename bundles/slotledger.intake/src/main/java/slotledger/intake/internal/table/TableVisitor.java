package slotledger.intake.internal.table;

import java.util.List;
import java.util.Set;
import slotledger.intake.internal.sheet.CellRange;

/** Is told of the tables in a file, row by row, in file order. */
public interface TableVisitor {

    void startTable(Table table);

    /** A row of the table started last. */
    void row(TableRow row);

    /**
     * A sheet ends, and with it its tables.
     *
     * @param merged        merged ranges, known only now
     * @param hiddenColumns 1-based columns a person does not see
     */
    default void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
        // Most readers take cells as they stand.
    }
}
