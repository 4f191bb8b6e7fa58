package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.CellarPlan;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.fixture.Spreadsheet;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Supplier;

class OrderWorkbookTest {

    @TempDir
    private Path folder;

    private XSSFWorkbook written(PlanBook book) throws Exception {
        Path file = new OrderWorkbookExporter().write(book, folder, Progress.NONE).get(0);
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    @Test
    void hasASheetForEachPartOfAnOrder() throws Exception {
        try (XSSFWorkbook workbook = written(SchoolPlan.book())) {
            List<String> names = new ArrayList<>();
            workbook.forEach(sheet -> names.add(sheet.getSheetName()));
            assertEquals(List.of("Summary", "Order Byte & Board Sons 'Co", "Order Merrow Parts", "Cost centres",
                    "Allocation", "Spares",
                    "Considered", "Leftovers", "Not helped", "What people decided", "What binds"), names);
        }
    }

    @Test
    void totalsAreFormulasWithTheValuesOfThePlan() throws Exception {
        PlanBook book = SchoolPlan.book();
        try (XSSFWorkbook workbook = written(book)) {
            assertTotal(workbook, "To pay to suppliers", 1, book.plan().spending().goods().amount());
            assertTotal(workbook, "To pay to suppliers", 3, book.plan().spending().payable().amount());
            assertTotal(workbook, "Cost in all", 3, book.plan().spending().total().amount());
        }
    }

    private static void assertTotal(XSSFWorkbook workbook, String row, int column, BigDecimal expected) {
        Cell cell = row(workbook.getSheet("Summary"), row).getCell(column);
        assertEquals(CellType.FORMULA, cell.getCellType(), row);
        assertEquals(expected, BigDecimal.valueOf(cell.getNumericCellValue()).setScale(2, RoundingMode.HALF_EVEN), row);
    }

    @Test
    void aChangedQuantityMovesTheLineTheDeliveryAndTheSummary() throws Exception {
        try (XSSFWorkbook workbook = written(SchoolPlan.book())) {
            Sheet order = workbook.getSheetAt(1);
            Row line = row(order, 1.0);
            line.getCell(4).setCellValue(1);
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertEquals(19.99, line.getCell(7).getNumericCellValue(), 1e-9);
            Row paid = row(workbook.getSheet("Summary"), "To pay to suppliers");
            assertEquals(699.92 - 7 * 19.99, paid.getCell(1).getNumericCellValue(), 1e-9);
            assertEquals(7.50, paid.getCell(2).getNumericCellValue(), 1e-9, "490.00 + 19.99 still is free of charge");
            row(order, 2.0).getCell(4).setCellValue(7);
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            assertEquals(17.40, paid.getCell(2).getNumericCellValue(), 1e-9, "448.74 is below the free order value");
        }
    }

    @Test
    void usedStockIsBoughtWithCare() throws Exception {
        try (XSSFWorkbook workbook = written(CellarPlan.book())) {
            assertTrue(texts(workbook.getSheet("Order Dunmarsk")).stream()
                    .anyMatch(text -> text.startsWith("FPM and EDO modules are no longer sold new")));
        }
        try (XSSFWorkbook workbook = written(SchoolPlan.book())) {
            workbook.forEach(sheet -> assertFalse(texts(sheet).stream().anyMatch(text -> text.contains("used stock"))));
        }
    }

    private static List<String> texts(Sheet sheet) {
        List<String> texts = new ArrayList<>();
        sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.STRING) {
                texts.add(cell.getStringCellValue());
            }
        }));
        return texts;
    }

    @Test
    void costCentresAddUpToTheGoodsWhateverTheirNames() throws Exception {
        try (XSSFWorkbook workbook = written(SchoolPlan.book())) {
            Sheet allocation = workbook.getSheet("Cost centres");
            assertEquals(79.96, row(allocation, "Lab").getCell(1).getNumericCellValue(), 1e-9);
            assertEquals(16.67, row(allocation, "*").getCell(1).getNumericCellValue(), 1e-9);
            assertEquals(39.98, row(allocation, ">5").getCell(1).getNumericCellValue(), 1e-9);
            assertEquals(0, row(allocation, "Library").getCell(1).getNumericCellValue(), 1e-9);
            assertEquals(699.92, row(allocation, "All").getCell(1).getNumericCellValue(), 1e-9);
        }
    }

    @Test
    void noTextOfAUserBecomesAFormula() throws Exception {
        try (XSSFWorkbook workbook = written(SchoolPlan.book())) {
            List<String> texts = new ArrayList<>();
            for (Sheet sheet : workbook) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            assertFalse(cell.getCellFormula().contains("HYPERLINK"), cell.getCellFormula());
                        } else if (cell.getCellType() == CellType.STRING) {
                            texts.add(cell.getStringCellValue());
                            if (cell.getStringCellValue().startsWith("=")) {
                                assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.getStringCellValue());
                            }
                        }
                    }
                }
            }
            assertTrue(texts.contains(SchoolPlan.HOSTILE));
            assertTrue(texts.contains("=1+1"));
        }
    }

    @Test
    void aPlanWithoutPurchasesStillHasItsSummary() throws Exception {
        try (XSSFWorkbook workbook = written(SchoolPlan.emptyBook())) {
            assertEquals(0, row(workbook.getSheet("Summary"), "Cost in all").getCell(3).getNumericCellValue());
        }
    }

    @Test
    void termsThatChangedAfterThePlanDontChangeItsDelivery() throws Exception {
        PlanBook book = SchoolPlan.book();
        Market market = new Market(book.market().offers(), Map.of(
                SchoolPlan.SUPPLIER, new Supplier(SchoolPlan.SUPPLIER, Optional.of(SchoolPlan.eur("20")),
                        Optional.empty(), Optional.empty()),
                SchoolPlan.OTHER, book.market().suppliers().get(SchoolPlan.OTHER)));
        PlanBook later = new PlanBook(book.plan(), book.boards(), market, List.of(), List.of());
        try (XSSFWorkbook workbook = written(later)) {
            assertTotal(workbook, "To pay to suppliers", 2, new BigDecimal("7.50"));
        }
    }

    @Test
    void aPlanWhoseTotalsDontAddUpIsRefused() {
        PlanBook book = SchoolPlan.book();
        Plan plan = book.plan();
        Spending wrong = new Spending(SchoolPlan.eur("700"),
                plan.spending().delivery(), plan.spending().labour(), Map.of());
        Plan broken = new Plan(plan.title(), plan.date(), plan.policy(), plan.machines(), plan.purchases(),
                plan.leftovers(), wrong, plan.optimality(), plan.remarks());
        assertThrows(IllegalStateException.class,
                () -> written(new PlanBook(broken, book.boards(), book.market(), List.of(), List.of())));
        assertEquals(0, folder.toFile().list().length);
    }

    @Test
    void aSpreadsheetProgramRecalculatesTheSameValues() throws Exception {
        Path file = new OrderWorkbookExporter().write(SchoolPlan.book(), folder, Progress.NONE).get(0);
        Path recalculated = Spreadsheet.recalculate(file, Files.createDirectory(folder.resolve("again")));
        int formulas = 0;
        try (InputStream before = Files.newInputStream(file);
                InputStream after = Files.newInputStream(recalculated);
                XSSFWorkbook ours = new XSSFWorkbook(before);
                XSSFWorkbook theirs = new XSSFWorkbook(after)) {
            for (Sheet sheet : ours) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getCellType() == CellType.FORMULA) {
                            formulas++;
                            Cell other = theirs.getSheet(sheet.getSheetName())
                                    .getRow(row.getRowNum()).getCell(cell.getColumnIndex());
                            assertEquals(cell.getCachedFormulaResultType(), other.getCachedFormulaResultType());
                            if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                                assertEquals(cell.getNumericCellValue(), other.getNumericCellValue(), 1e-6,
                                        sheet.getSheetName() + cell.getAddress());
                            } else {
                                assertEquals(cell.getStringCellValue(), other.getStringCellValue());
                            }
                        }
                    }
                }
            }
        }
        assertTrue(formulas > 30, "formulas compared: " + formulas);
    }

    private static Row row(Sheet sheet, Object first) {
        for (Row row : sheet) {
            Cell cell = row.getCell(0);
            if (cell != null && (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(first)
                    || cell.getCellType() == CellType.NUMERIC
                    && Double.valueOf(cell.getNumericCellValue()).equals(first))) {
                return row;
            }
        }
        throw new AssertionError("no row " + first);
    }
}
