package slotledger.intake.internal.sheet;

import java.util.List;
import java.util.Set;

/** Is told what is in a file, sheet by sheet, row by row, in file order. */
public interface SheetVisitor {

    /**
     * A sheet begins.
     *
     * @param name   its name; empty in text files
     * @param hidden whether a person does not see it
     */
    void startSheet(String name, boolean hidden);

    /**
     * The row told next is one a person does not see: hidden by hand or by a filter.
     *
     * @param number 1-based row
     */
    default void hiddenRow(int number) {
        // most readers take hidden rows like any other
    }

    /**
     * A row that holds something.
     *
     * @param number 1-based row, or line in a text file
     * @param cells  cells that hold something, by column; the list may be used again for the next row
     */
    void row(int number, List<Cell> cells);

    /**
     * A sheet ends.
     *
     * @param merged        merged ranges, known only now
     * @param hiddenColumns 1-based columns a person does not see
     */
    void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns);
}
