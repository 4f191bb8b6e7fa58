package slotledger.intake.internal.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The cells of the row under way, put in order; of two cells in one place the later one holds. */
final class RowCells {

    /** Texts of one row together: 512 cells as full as a cell can be. */
    private static final long MOST_CHARACTERS = 512L * 32_767;
    private static final int MOST_CELLS = 4 * CellName.MOST_COLUMNS;

    private final List<Cell> cells = new ArrayList<>();
    private final List<Cell> view = Collections.unmodifiableList(cells);
    private boolean ordered = true;
    private long characters;

    void clear() {
        cells.clear();
        ordered = true;
        characters = 0;
    }

    void add(Cell cell) throws BadSheetException {
        if (cell.text().isEmpty()) {
            return;
        }
        characters += cell.text().length();
        if (characters > MOST_CHARACTERS) {
            throw BadSheetException.tooLarge("A row holds more than %d characters.".formatted(MOST_CHARACTERS));
        }
        ordered &= cells.isEmpty() || cells.get(cells.size() - 1).column() < cell.column();
        cells.add(cell);
        if (cells.size() > MOST_CELLS) {
            order();
        }
    }

    /** Tells the visitor, unless there is nothing to tell. */
    void tell(int row, boolean hidden, SheetVisitor visitor) {
        if (cells.isEmpty()) {
            return;
        }
        order();
        if (hidden) {
            visitor.hiddenRow(row);
        }
        visitor.row(row, view);
    }

    private void order() {
        if (!ordered) {
            Map<Integer, Cell> byColumn = new TreeMap<>();
            cells.forEach(cell -> byColumn.put(cell.column(), cell));
            cells.clear();
            cells.addAll(byColumn.values());
            ordered = true;
        }
    }
}
