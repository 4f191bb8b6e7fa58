package slotledger.export.internal.matrix;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slotledger.export.ExportException;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.BoardMatrix.Row;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.verdict.Weight;

/** The workbook of a matrix: the grid, every reason, and the board with its sources. */
public final class MatrixBook {

    private static final int LEFT = 3;
    private static final int[] LEFT_WIDTHS = {6, 40, 14};
    /** More columns than this are printed on several pages side by side. */
    private static final int ONE_PAGE = 9;
    private static final int FEW = 6;

    private final BoardMatrix matrix;
    private final List<Row> rows;
    private final boolean wide;

    public MatrixBook(BoardMatrix matrix) {
        this.matrix = matrix;
        rows = new ArrayList<>(matrix.rows(false));
        rows.addAll(matrix.rows(true));
        wide = matrix.columns().size() <= FEW;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("Memory for " + matrix.board().name())) {
                grid(workbook.page("Matrix", widths()));
                ReasonsPage.fill(workbook, rows, matrix.columns());
                BoardPage.fill(workbook, matrix.board());
                workbook.save(out);
            }
        });
    }

    private int[] widths() {
        int[] widths = Arrays.copyOf(LEFT_WIDTHS, LEFT + matrix.columns().size());
        Arrays.fill(widths, LEFT, widths.length, wide ? 19 : 12);
        return widths;
    }

    private void grid(Page page) {
        int columns = matrix.columns().size();
        page.keep(LEFT, columns <= ONE_PAGE ? 1 : (columns + ONE_PAGE - 1) / ONE_PAGE);
        page.title("What memory the " + matrix.board().name() + " takes, slot by slot");
        page.note("By " + matrix.board().source() + ". Modules that go in nowhere stand last. "
                + "Why, and who says so: sheet Reasons.");
        List<String> legend = new ArrayList<>();
        for (Weight weight : Weight.values()) {
            legend.add(Cells.word(weight) + ": " + Cells.meaning(weight));
        }
        page.note(String.join("   ", legend.subList(0, 3)));
        page.note(String.join("   ", legend.subList(3, legend.size())));
        page.header(headings());
        for (int i = 0; i < rows.size(); i++) {
            row(page, i);
        }
        if (rows.isEmpty()) {
            page.next().text(1, "The project knows no module.");
        }
        page.filter(LEFT);
        page.gap();
        page.note("Below the word: the sockets that had to hold such a module for it (nothing else was in the "
                + "machine), how the channels run, and the rate in MT/s.");
        page.note("Judged with all processors; where it matters which processor or system is in the machine, "
                + "judge the machine itself (slotledger explain).");
    }

    private String[] headings() {
        List<String> names = new ArrayList<>(List.of("No.", "Module", "Known from"));
        for (Column column : matrix.columns()) {
            names.add(column.name() + (column.isOpen() ? "" : "\n(" + column.closed() + ")"));
        }
        return names.toArray(String[]::new);
    }

    private void row(Page page, int index) {
        Row row = rows.get(index);
        page.next().count(0, index + 1).text(1, row.kind().toString(), Look.STRONG).text(2, from(row));
        for (int i = 0; i < matrix.columns().size(); i++) {
            Column column = matrix.columns().get(i);
            Optional<Cell> cell = row.cells().get(i);
            if (cell.isPresent()) {
                page.text(LEFT + i, Cells.text(cell.get(), column.name(), wide), Cells.look(cell.get().weight()));
            } else {
                page.text(LEFT + i, "– " + column.closed(), Look.CELL_CLOSED);
            }
        }
    }

    private static String from(Row row) {
        return String.join(", ", row.from().stream().sorted().map(KnownFrom::text).toList());
    }
}
