package slotledger.intake.internal.sheet;

/**
 * A rectangle of cells, 1-based, both ends included.
 *
 * @param firstRow    top
 * @param firstColumn left
 * @param lastRow     bottom
 * @param lastColumn  right
 */
public record CellRange(int firstRow, int firstColumn, int lastRow, int lastColumn) {

    public CellRange {
        if (firstRow < 1 || firstColumn < 1 || lastRow < firstRow || lastColumn < firstColumn) {
            throw new IllegalArgumentException("The range must begin at row and column 1 or later and not end before.");
        }
    }
}
