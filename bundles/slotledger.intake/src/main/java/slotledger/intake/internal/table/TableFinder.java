package slotledger.intake.internal.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetVisitor;
import slotledger.intake.internal.table.HeaderFinder.SheetRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Texts;
import slotledger.model.finding.Finding;
import slotledger.model.observed.TableUse;
import slotledger.model.source.Place;

/**
 * Finds the tables in the sheets of one file and passes their rows on. Keeps only the first rows of a sheet in memory.
 * Rows that belong to no table become findings.
 */
public final class TableFinder implements SheetVisitor {

    /** Headings further down are not looked for. */
    private static final int LOOK_AHEAD = 50;
    /** An example row of our templates begins one of its cells with this word. */
    private static final String EXAMPLE = "EXAMPLE";

    private final String file;
    private final HeaderFinder finder;
    private final TableVisitor visitor;
    private final Consumer<Finding> findings;
    private final List<TableUse> uses = new ArrayList<>();

    private final List<SheetRow> buffer = new ArrayList<>();
    private String sheet = "";
    private boolean hidden;
    private boolean settled;
    private Table table;
    private int rowsOfTable;
    private int rowsOfSheet;
    private int tablesOfFile;

    /**
     * Prepares for one file.
     *
     * @param least how many fields must be recognised in a heading
     */
    public TableFinder(String file, Headings headings, int least, TableVisitor visitor, Consumer<Finding> findings) {
        this.file = file;
        this.finder = new HeaderFinder(headings, least);
        this.visitor = visitor;
        this.findings = findings;
    }

    @Override
    public void startSheet(String name, boolean isHidden) {
        sheet = name;
        hidden = isHidden;
        settled = false;
        table = null;
        rowsOfTable = 0;
        rowsOfSheet = 0;
        buffer.clear();
    }

    @Override
    public void row(int number, List<Cell> cells) {
        if (cells.stream().allMatch(cell -> cell.text().isBlank())) {
            return;
        }
        rowsOfSheet++;
        if (settled) {
            pass(new SheetRow(number, cells));
            return;
        }
        buffer.add(new SheetRow(number, List.copyOf(cells)));
        if (buffer.size() >= LOOK_AHEAD) {
            settle();
        }
    }

    private void settle() {
        settled = true;
        Optional<HeaderFinder.Header> header = finder.find(buffer);
        int next = 0;
        if (header.isPresent()) {
            List<String> titles = new ArrayList<>();
            for (SheetRow row : buffer.subList(0, header.get().first())) {
                titles.add(shown(row));
                report(Doubt.note("title-row", "This row stands above the headings and was not read as data.",
                        "", "Nothing, if it is a title."), row.number(), shown(row));
            }
            start(buffer.get(header.get().last()).number(), header.get().columns(), titles);
            next = header.get().last() + 1;
        }
        for (SheetRow row : buffer.subList(next, buffer.size())) {
            pass(row);
        }
        buffer.clear();
    }

    private void start(int headerRow, List<Column> columns, List<String> titles) {
        table = new Table(file, sheet, headerRow, columns, titles);
        rowsOfTable = 0;
        tablesOfFile++;
        if (hidden) {
            findings.accept(Doubt.warning("hidden-sheet", "This sheet is hidden, but it holds a table and was read.",
                    "", "Delete the sheet if it is an old copy.").at(table.headerPlace(), ""));
        }
        visitor.startTable(table);
    }

    private void pass(SheetRow row) {
        if (table == null) {
            return;
        }
        Optional<List<Column>> again = finder.again(row);
        if (again.isPresent()) {
            repeated(row, again.get());
        } else if (row.cells().stream().anyMatch(cell -> Texts.tidy(cell.text()).startsWith(EXAMPLE))) {
            report(Doubt.note("example-row", "This is the example row of the template; it was skipped.", "",
                    "Delete the row."), row.number(), shown(row));
        } else {
            rowsOfTable++;
            visitor.row(new TableRow(table, row.number(), row.cells()));
        }
    }

    private void repeated(SheetRow row, List<Column> columns) {
        boolean same = columns.stream().map(Column::meaning).toList()
                .equals(table.columns().stream().map(Column::meaning).toList());
        if (same) {
            report(Doubt.note("headings-repeated", "The headings are repeated here.", "", "Nothing."), row.number(),
                    shown(row));
        } else {
            close();
            start(row.number(), columns, table.titles());
        }
    }

    private void close() {
        if (table != null) {
            List<TableUse.ColumnUse> columns =
                    table.columns().stream().map(column -> new TableUse.ColumnUse(column.number(),
                    column.heading(), column.meaning().map(Meaning::toString).orElse(""))).toList();
            uses.add(new TableUse(file, sheet, table.headerRow(), rowsOfTable, columns));
        }
    }

    @Override
    public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
        if (!settled) {
            settle();
        }
        if (table == null) {
            noTable();
            return;
        }
        Set<Integer> unseen = new TreeSet<>(hiddenColumns);
        for (Column column : table.columns()) {
            if (unseen.contains(column.number()) && column.meaning().isPresent()) {
                findings.accept(Doubt.note("hidden-column", "This column is hidden, but it was used as %s."
                        .formatted(column.meaning().get()), "", "Delete the column if it is out of date.")
                        .at(table.place(table.headerRow(), column), column.heading()));
            }
        }
        close();
        visitor.endSheet(merged, hiddenColumns);
    }

    private void noTable() {
        Place place = new Place(file, sheet, OptionalInt.empty(), OptionalInt.empty(), "");
        if (rowsOfSheet > 0) {
            findings.accept(Doubt.note("sheet-without-table",
                    "No headings were found in the first %d rows, so none of the %d rows here was read."
                            .formatted(LOOK_AHEAD, rowsOfSheet),
                    "a row of headings", "If it holds data, name its headings in a mapping file.").at(place, ""));
        }
    }

    /** Says that a file has nothing to read, where that is so; called after its last sheet. */
    public void endFile(String expected) {
        if (tablesOfFile == 0) {
            findings.accept(Doubt.error("no-table", "No table was found in this file.", expected,
                    "Compare it with the template, or name its headings in a mapping file.")
                    .at(Place.ofFile(file), ""));
        }
    }

    /** How the columns were understood. */
    public List<TableUse> uses() {
        return List.copyOf(uses);
    }

    private void report(Doubt doubt, int row, String seen) {
        findings.accept(doubt.at(Place.ofRow(file, sheet, row), seen));
    }

    private static String shown(SheetRow row) {
        return new TableRow(new Table("", "", 1, List.of(), List.of()), row.number(), row.cells()).shown();
    }
}
