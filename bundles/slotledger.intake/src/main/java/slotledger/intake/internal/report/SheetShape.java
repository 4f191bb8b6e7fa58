package slotledger.intake.internal.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetVisitor;

/** How far a sheet reaches and how wide its columns are, learnt before it is mirrored. */
final class SheetShape {

    private static final int WIDEST = 50;
    private static final int NARROWEST = 8;
    private static final int ROWS_MEASURED = 1_000;

    int headerRow;
    int lastRow;
    int lastColumn = 1;
    final TreeMap<Integer, Integer> widths = new TreeMap<>();
    final Set<Integer> hiddenColumns = new TreeSet<>();

    private int rows;

    private void see(int number, List<Cell> cells) {
        lastRow = number;
        rows++;
        for (Cell cell : cells) {
            lastColumn = Math.max(lastColumn, cell.column());
            if (rows <= ROWS_MEASURED) {
                int length = Math.min(WIDEST, Math.max(NARROWEST, cell.text().length() + 2));
                widths.merge(cell.column(), length, Math::max);
            }
        }
    }

    /** Learns the shapes of all sheets of a file, and passes everything on. */
    static final class Measure implements SheetVisitor {

        final List<SheetShape> shapes = new ArrayList<>();
        private final SheetVisitor next;
        private SheetShape current;

        Measure(SheetVisitor next) {
            this.next = next;
        }

        SheetShape current() {
            return current;
        }

        @Override
        public void startSheet(String name, boolean hidden) {
            current = new SheetShape();
            shapes.add(current);
            next.startSheet(name, hidden);
        }

        @Override
        public void row(int number, List<Cell> cells) {
            current.see(number, cells);
            next.row(number, cells);
        }

        @Override
        public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
            current.hiddenColumns.addAll(hiddenColumns);
            next.endSheet(merged, hiddenColumns);
        }
    }
}
