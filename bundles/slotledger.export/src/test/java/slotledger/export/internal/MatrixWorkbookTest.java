package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.ExportException;
import slotledger.export.internal.fixture.Boards;
import slotledger.export.internal.fixture.Modules;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.fixture.Spreadsheet;
import slotledger.model.board.Board;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

class MatrixWorkbookTest {

    private static final int HEADER = 4;

    @TempDir
    private Path folder;

    @Test
    void everyCellOfTheGridHasASymbolAndAWord() throws Exception {
        List<List<String>> rows = sheet(matrix(Boards.DESKTOP), "Matrix");
        assertEquals(List.of("No.", "Module", "Known from", "DIMM1", "DIMM2", "DIMM3", "DIMM4", "all sockets"),
                rows.get(HEADER));
        assertEquals(List.of("1", Modules.DDR4_8.toString(), "on offer, in the fleet", "✓ passes\nalone\ndual, 2400"),
                rows.get(HEADER + 1).subList(0, 4));
        assertEquals("? unknown\nalone\ndual, 2400\nmissing: ranks", rows.get(HEADER + 2).get(3));
        assertEquals("✗ blocks\ngeneration", rows.get(HEADER + 3).get(3));
        assertEquals("✓ passes\n4 modules\ndual, 2400", rows.get(HEADER + 1).get(7));
    }

    @Test
    void weightsDifferByTheirBorderToo() throws Exception {
        try (XSSFWorkbook workbook = written(matrix(Boards.DESKTOP))) {
            Set<BorderStyle> borders = Set.of(border(workbook, 1), border(workbook, 2), border(workbook, 3));
            assertEquals(3, borders.size(), borders.toString());
        }
    }

    private static BorderStyle border(XSSFWorkbook workbook, int row) {
        Cell cell = workbook.getSheet("Matrix").getRow(HEADER + row).getCell(3);
        return ((XSSFCellStyle) cell.getCellStyle()).getBorderLeft();
    }

    @Test
    void modulesThatGoInNowhereStandLast() throws Exception {
        List<List<String>> rows = sheet(matrix(Boards.DESKTOP), "Matrix");
        assertEquals(List.of(Modules.DDR4_8, Modules.DDR4_16, Modules.DDR3_2).stream().map(Object::toString).toList(),
                rows.subList(HEADER + 1, HEADER + 4).stream().map(row -> row.get(1)).toList());
    }

    @Test
    void solderedMemoryAndDeadConnectorsSaySo() throws Exception {
        List<List<String>> notebook = sheet(matrix(Boards.NOTEBOOK), "Matrix");
        assertEquals("On board\n(soldered, 4 GB)", notebook.get(HEADER).get(3));
        assertEquals("– soldered, 4 GB", notebook.get(HEADER + 1).get(3));
        assertEquals("– dead, not wired", sheet(matrix(Boards.OLD), "Matrix").get(HEADER + 1).get(5));
    }

    @Test
    void headingsAndModulesStayInSight() throws Exception {
        try (XSSFWorkbook workbook = written(matrix(Boards.SERVER))) {
            Sheet grid = workbook.getSheet("Matrix");
            assertEquals(HEADER + 1, grid.getPaneInformation().getHorizontalSplitPosition());
            assertEquals(3, grid.getPaneInformation().getVerticalSplitPosition());
            assertEquals(2, grid.getPrintSetup().getFitWidth(), "16 slots and all of them need two pages");
            assertEquals("A:C", grid.getRepeatingColumns().formatAsString().replace("$", ""));
            assertTrue(grid.getPrintSetup().getLandscape());
        }
    }

    @Test
    void everyReasonSaysWhoSaysSoAndWhatToDo() throws Exception {
        List<List<String>> rows = sheet(matrix(Boards.DESKTOP), "Reasons");
        List<String> unknown = rows.stream().filter(row -> row.contains("module-ranks")).findFirst().orElseThrow();
        assertEquals(List.of("2", Modules.DDR4_16.toString(), "every socket", "? unknown", "module-ranks",
                "Nobody knows the ranks of the module in slot DIMM1.", "Manual, page 3",
                "Find out the ranks of a module. " + MissingFact.RANKS.cheapestWay()), unknown);
        assertTrue(rows.stream().anyMatch(row -> row.contains("→ Its notch sits elsewhere.")), rows.toString());
        assertTrue(rows.stream().anyMatch(row ->
                row.contains("Tried in DIMM1, DIMM2, DIMM3, DIMM4: 32 GB, dual channel, 2400 MT/s.")), rows.toString());
    }

    @Test
    void theBoardSheetNamesTheDocumentOfEveryFact() throws Exception {
        List<List<String>> rows = sheet(matrix(Boards.DESKTOP), "Board");
        assertTrue(rows.stream().filter(row -> row.contains("Takes")).findFirst().orElseThrow()
                .contains(Boards.DESKTOP.source().toString()), rows.toString());
        assertTrue(rows.stream().anyMatch(row -> row.contains("DIMM1") && row.contains("socket")), rows.toString());
    }

    @Test
    void noTextBecomesAFormula() throws Exception {
        try (XSSFWorkbook workbook = written(matrix(Boards.DESKTOP))) {
            boolean seen = false;
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        assertFalse(cell.getCellType() == CellType.FORMULA, cell.toString());
                        if (new DataFormatter().formatCellValue(cell).startsWith("=")) {
                            seen = true;
                            assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.toString());
                        }
                    }
                }
            }
            assertTrue(seen, "a text that looks like a formula is part of this test");
        }
    }

    @Test
    void aMatrixWithoutModulesIsAWorkbookToo() throws Exception {
        BoardMatrix full = matrix(Boards.DESKTOP);
        List<List<String>> rows =
                sheet(new BoardMatrix(full.board(), full.columns(), List.of()), "Matrix");
        assertTrue(rows.get(HEADER + 1).contains("The project knows no module."), rows.toString());
    }

    @Test
    void aSpreadsheetProgramOpensIt() throws Exception {
        Path file = folder.resolve("matrix.xlsx");
        new DefaultPlanFiles().writeMatrix(matrix(Boards.SERVER), file);
        Path again = Spreadsheet.recalculate(
                file, Files.createDirectory(folder.resolve("again")));
        try (InputStream in = Files.newInputStream(again); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            assertEquals("✗ blocks\ngeneration",
                    workbook.getSheet("Matrix").getRow(HEADER + 3).getCell(3).getStringCellValue());
        }
    }

    @Test
    void aFolderThatIsNotThereIsNamed() {
        Path file = folder.resolve("missing").resolve("matrix.xlsx");
        String message = assertThrows(ExportException.class,
                () -> new DefaultPlanFiles().writeMatrix(matrix(Boards.DESKTOP), file)).getMessage();
        assertTrue(message.contains(file.toString()), message);
    }

    private XSSFWorkbook written(BoardMatrix matrix) throws Exception {
        Path file = folder.resolve("matrix.xlsx");
        new DefaultPlanFiles().writeMatrix(matrix, file);
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    private List<List<String>> sheet(BoardMatrix matrix, String name) throws Exception {
        List<List<String>> rows = new ArrayList<>();
        try (XSSFWorkbook workbook = written(matrix)) {
            for (Row row : workbook.getSheet(name)) {
                List<String> cells = new ArrayList<>();
                for (Cell cell : row) {
                    cells.add(new DataFormatter().formatCellValue(cell));
                }
                rows.add(cells);
            }
        }
        return rows;
    }

    private static BoardMatrix matrix(Board board) {
        List<Column> columns = new ArrayList<>();
        board.slots().forEach(slot -> columns.add(new Column(Optional.of(slot))));
        columns.add(new Column(Optional.empty()));
        return new BoardMatrix(board, columns, List.of(
                row(Modules.DDR3_2, Set.of(KnownFrom.FLEET), columns, "generation", Weight.BLOCKS, "=1+1"),
                row(Modules.DDR4_8, Set.of(KnownFrom.OFFER, KnownFrom.FLEET), columns, "form", Weight.PASSES,
                        SchoolPlan.HOSTILE),
                row(Modules.DDR4_16, Set.of(KnownFrom.SHELF), columns, "module-ranks", Weight.UNKNOWN, "")));
    }

    private static BoardMatrix.Row row(
            ModuleKind kind, Set<KnownFrom> from, List<Column> columns, String rule, Weight weight, String sentence) {
        List<String> sockets = columns.stream().filter(column -> column.isOpen() && column.slot().isPresent())
                .map(Column::name).toList();
        List<Optional<BoardMatrix.Cell>> cells = new ArrayList<>();
        for (Column column : columns) {
            if (!column.isOpen()) {
                cells.add(Optional.empty());
                continue;
            }
            List<String> filled = column.slot().map(slot -> List.of(slot.label())).orElse(sockets);
            String said = sentence.isEmpty()
                    ? "Nobody knows the ranks of the module in slot %s.".formatted(filled.get(0)) : sentence;
            Reason reason = reason(rule, weight, said, filled.subList(0, 1));
            cells.add(Optional.of(new BoardMatrix.Cell(filled,
                    new Verdict(weight, runs(kind.capacity().times(filled.size())), List.of(reason)),
                    weight == Weight.PASSES ? Optional.empty() : Optional.of(reason))));
        }
        return new BoardMatrix.Row(kind, from, cells);
    }

    private static Reason reason(String rule, Weight weight, String sentence, List<String> slots) {
        Source manual = Source.document("Manual", "page 3");
        Optional<MissingFact> missing = weight == Weight.UNKNOWN ? Optional.of(MissingFact.RANKS) : Optional.empty();
        Reason finer = new Reason("look-alike", Weight.CAUTION, "Its notch sits elsewhere.", List.of(), manual, "",
                List.of(), Optional.empty());
        return new Reason(rule, weight, sentence, slots, manual, missing.map(MissingFact::cheapestWay).orElse(""),
                weight == Weight.BLOCKS ? List.of(finer) : List.of(), missing);
    }

    private static Operation runs(Capacity total) {
        return new Operation(total, total, total, new ChannelMode(2, total, Capacity.NONE),
                Optional.of(Rate.of(2400)), "", new Bandwidth(38_400_000), false);
    }
}
