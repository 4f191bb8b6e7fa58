package slotledger.intake.internal.report;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.fleet.SpreadsheetInventory;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.sheet.SheetVisitor;
import slotledger.intake.internal.table.Headings;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableFinder;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.table.TableVisitor;
import slotledger.model.finding.Finding;
import slotledger.model.task.Progress;

/**
 * The findings workbook: a list of all findings, then the inventories' sheets with notes on the cells concerned. Reads
 * each inventory twice and keeps only a few rows in memory.
 */
public final class FindingsWorkbook {

    private static final int ROWS_IN_MEMORY = 100;
    private static final int MOST_NOTES = 5_000;
    private static final int LONGEST_NAME = 31;

    private final SheetFile sheets;

    public FindingsWorkbook(SheetFile sheets) {
        this.sheets = sheets;
    }

    public void write(List<Path> files, List<Finding> findings, Path target) throws IntakeException {
        WholeFile.write(target, out -> write(files, findings, out));
    }

    private void write(List<Path> files, List<Finding> findings, OutputStream out) throws IOException, IntakeException {
        Map<List<String>, Map<Integer, List<Finding>>> places = new HashMap<>();
        for (Finding finding : findings) {
            finding.place().row().ifPresent(row -> places
                    .computeIfAbsent(List.of(finding.place().file(), finding.place().sheet()), key -> new HashMap<>())
                    .computeIfAbsent(row, key -> new ArrayList<>()).add(finding));
        }
        Map<List<String>, SheetShape> shapes = new LinkedHashMap<>();
        for (Path file : files) {
            measure(file, shapes);
        }
        Map<List<String>, String> names = names(shapes);
        try (SXSSFWorkbook book = new SXSSFWorkbook(ROWS_IN_MEMORY)) {
            BookStyles styles = new BookStyles(book);
            new FindingsList(book, styles).write(findings, names);
            MirrorSheet.Notes notes = new MirrorSheet.Notes(MOST_NOTES);
            for (Path file : files) {
                String name = String.valueOf(file.getFileName());
                sheets.read(file, new SheetVisitor() {
                    private MirrorSheet mirror;

                    @Override
                    public void startSheet(String sheet, boolean hidden) {
                        List<String> key = List.of(name, sheet);
                        SXSSFSheet copy = book.createSheet(names.get(key));
                        mirror = new MirrorSheet(copy, shapes.get(key), styles, places.getOrDefault(key, Map.of()),
                                notes);
                        mirror.begin();
                    }

                    @Override
                    public void row(int number, List<Cell> cells) {
                        mirror.row(number, cells);
                    }

                    @Override
                    public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
                        // Merged cells stay apart, so that filters and sorting work.
                    }
                }, Progress.NONE);
            }
            book.write(out);
        }
    }

    private void measure(Path file, Map<List<String>, SheetShape> shapes) throws IntakeException {
        String name = String.valueOf(file.getFileName());
        SheetShape.Measure[] measure = new SheetShape.Measure[1];
        List<String> sheetNames = new ArrayList<>();
        TableFinder finder = new TableFinder(name, Headings.of(SpreadsheetInventory.HEADINGS, Map.of()),
                SpreadsheetInventory.LEAST_FIELDS, new TableVisitor() {
                    @Override
                    public void startTable(Table table) {
                        SheetShape shape = measure[0].current();
                        shape.headerRow = shape.headerRow == 0 ? table.headerRow() : shape.headerRow;
                    }

                    @Override
                    public void row(TableRow row) {
                        // Only the headings matter here.
                    }
                }, finding -> { });
        measure[0] = new SheetShape.Measure(new SheetVisitor() {
            @Override
            public void startSheet(String sheet, boolean hidden) {
                sheetNames.add(sheet);
                finder.startSheet(sheet, hidden);
            }

            @Override
            public void row(int number, List<Cell> cells) {
                finder.row(number, cells);
            }

            @Override
            public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
                finder.endSheet(merged, hiddenColumns);
            }
        });
        sheets.read(file, measure[0], Progress.NONE);
        for (int i = 0; i < sheetNames.size(); i++) {
            shapes.put(List.of(name, sheetNames.get(i)), measure[0].shapes.get(i));
        }
    }

    /** Sheet names that a workbook allows and that stay apart. */
    private static Map<List<String>, String> names(Map<List<String>, SheetShape> shapes) {
        Map<List<String>, String> names = new HashMap<>();
        Set<String> used = new HashSet<>(Set.of(FindingsList.NAME.toLowerCase(Locale.ROOT)));
        for (List<String> key : shapes.keySet()) {
            String wanted = WorkbookUtil.createSafeSheetName(key.get(1).isEmpty() ? key.get(0) : key.get(1));
            String name = wanted;
            for (int i = 2; !used.add(name.toLowerCase(Locale.ROOT)); i++) {
                String suffix = " (" + i + ")";
                name = wanted.substring(0, Math.min(wanted.length(), LONGEST_NAME - suffix.length())) + suffix;
            }
            names.put(key, name);
        }
        return names;
    }
}
