package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.InsightPlan;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;

class WhatBindsPageTest {

    @TempDir
    private Path folder;

    private List<String> lines(PlanBook book) throws Exception {
        Path file = new OrderWorkbookExporter().write(book, folder, Progress.NONE).get(0);
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            return lines(workbook.getSheet("What binds"));
        }
    }

    private static List<String> lines(Sheet sheet) {
        List<String> lines = new ArrayList<>();
        for (Row row : sheet) {
            StringBuilder line = new StringBuilder();
            for (Cell cell : row) {
                String text = new DataFormatter().formatCellValue(cell);
                line.append(text.isEmpty() ? "" : text + " | ");
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private static void assertHas(String wanted, List<String> lines) {
        assertTrue(lines.stream().anyMatch(line -> line.startsWith(wanted)),
                wanted + " in\n" + String.join("\n", lines));
    }

    @Test
    void whatWouldFreeMachinesIsListedWithTheirNumber() throws Exception {
        assertHas("EUR 19.99 more would do. | budget | 1 | LAB-03", lines(SchoolPlan.book()));
    }

    @Test
    void withoutInsightsItIsSaidHowToGetThem() throws Exception {
        assertEquals(2, lines(SchoolPlan.book()).stream()
                .filter(line -> line.startsWith("Not computed. Plan with --insights")).count());
    }

    @Test
    void budgetsAndLinesAreComparedWithThePlan() throws Exception {
        PlanBook book = SchoolPlan.book();
        Figures now = Figures.of(book.plan());
        List<String> lines = lines(new PlanBook(InsightPlan.of(book.plan()), book.boards(), book.market(),
                book.unresolved(), book.findings()));
        assertHas("Smallest that does as much as this plan | " + now.payable() + " | EUR 0.00 | "
                + now.onTarget(), lines);
        assertTrue(lines.stream().anyMatch(line -> line.contains("No longer on target: LAB-01.")), lines.toString());
        assertHas("Larger (perhaps less is enough) | ", lines);
        assertTrue(lines.stream().anyMatch(line -> line.contains("| 1 | ")
                && line.contains("| EUR 19.99 | LAB-01, LAB-02")),
                lines.toString());
        assertHas("to keep the room north / 1 uniform | " + (now.onTarget() + 1) + " | 1 | ",
                lines);
    }

    @Test
    void aCurveIsATableWithAChart() throws Exception {
        Money nothing = Money.zero(Currency.getInstance("EUR"));
        Money ten = new Money(1000, nothing.currency());
        BudgetCurve curve = new BudgetCurve(List.of(
                new BudgetCurve.Point(nothing, new Figures(1, 2, 3, nothing, nothing, nothing)),
                new BudgetCurve.Point(ten, new Figures(2, 4, 4, ten, ten, ten))), Optional.of(ten), 9);
        Path file = folder.resolve("curve.xlsx");
        new DefaultPlanFiles().writeCurve(curve, "=school", file);
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            List<String> lines = lines(workbook.getSheetAt(0));
            assertHas("EUR 0.00 | 1 | 2 | 3 | EUR 0.00 | EUR 0.00 | a better plan may exist", lines);
            assertHas("EUR 10.00 | 2 | 4 | 4 | EUR 10.00 | EUR 10.00 | the budget of the policy;"
                    + " more money brings no more", lines);
            assertEquals(1, workbook.getSheetAt(0).getDrawingPatriarch().getCharts().size());
        }
    }
}
