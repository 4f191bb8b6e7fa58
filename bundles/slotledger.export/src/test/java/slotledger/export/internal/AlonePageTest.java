package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Currency;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.model.plan.BoughtAlone;
import slotledger.model.plan.Insights;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;

class AlonePageTest {

    @TempDir
    private Path folder;

    private final PlanBook book = SchoolPlan.book();
    private final Plan plan = book.plan();
    private final long onTarget = Stream.of(Outcome.ON_TARGET, Outcome.DONOR, Outcome.REACHES_TARGET)
            .mapToLong(plan::count).sum();

    @Test
    void moneyOfThePlanFollowsTheOrdersAndTheOtherIsAsReckoned() throws Exception {
        try (XSSFWorkbook workbook = written(onTarget, 1234)) {
            Row all = row(workbook, "Cost in all");
            assertEquals(plan.spending().total().amount().doubleValue(), all.getCell(1).getNumericCellValue(), 1e-9);
            assertEquals(CellType.FORMULA, row(workbook, "Modules and fillers").getCell(1).getCellType());
            assertEquals(12.34 + 3 + 2, all.getCell(2).getNumericCellValue(), 1e-9);
            assertEquals(plan.spending().total().minus(eur(1234 + 300 + 200)).amount().doubleValue(),
                    all.getCell(3).getNumericCellValue(), 1e-9);
        }
    }

    @Test
    void aSentenceSaysWhatTheDifferenceIs() throws Exception {
        Money total = plan.spending().total();
        assertSays("The plan brings as many machines to their target and costs EUR 7.00 less.",
                onTarget, total.minor() + 700 - 500);
        assertSays("The plan brings 1 more machine to their target and costs EUR 7.00 more.",
                onTarget - 1, total.minor() - 700 - 500);
        assertSays("The plan brings 2 fewer machines to their target and costs the same."
                + " Those it brings there are the more urgent ones.", onTarget + 2, total.minor() - 500);
    }

    private void assertSays(String sentence, long other, long goods) throws Exception {
        try (XSSFWorkbook workbook = written(other, goods)) {
            assertTrue(StreamSupport.stream(workbook.getSheet("Machine by machine").spliterator(), false)
                    .anyMatch(row -> row.getCell(0) != null && row.getCell(0).toString().equals(sentence)), sentence);
        }
    }

    private XSSFWorkbook written(long other, long goods) throws IOException, ExportException {
        BoughtAlone alone = new BoughtAlone(other, other, 3, eur(goods), eur(300), eur(200));
        PlanBook with = new PlanBook(plan.withInsights(new Insights(Optional.of(alone))), book.boards(), book.market(),
                book.unresolved(), book.findings());
        Path file = new OrderWorkbookExporter().write(with, folder, Progress.NONE).get(0);
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    private static Row row(XSSFWorkbook workbook, String name) {
        return StreamSupport.stream(workbook.getSheet("Machine by machine").spliterator(), false)
                .filter(row -> row.getCell(0) != null && row.getCell(0).toString().equals(name))
                .findFirst().orElseThrow(() -> new AssertionError("no row " + name));
    }

    private static Money eur(long minor) {
        return new Money(minor, Currency.getInstance("EUR"));
    }
}
