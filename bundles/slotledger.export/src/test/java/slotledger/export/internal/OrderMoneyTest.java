package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.Modules;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.order.OrderBook;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;

class OrderMoneyTest {

    private static final String SUPPLIER = "Nord";

    @TempDir
    private Path folder;

    /** 9 packs at 20.00 and 3 at 18.00 are 234.00; 19 % of 241.50 with delivery are 45.885. */
    private static PlanBook book() {
        Offer offer = new Offer("Nord/1", SUPPLIER, "1", Optional.empty(), Modules.DDR4_8, 1,
                List.of(new PriceStep(1, SchoolPlan.eur("20")), new PriceStep(10, SchoolPlan.eur("18"))),
                PriceRule.FURTHER_PACKS, OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Place.NOWHERE);
        Money nothing = Money.zero(SchoolPlan.EUR);
        Spending spending = new Spending(SchoolPlan.eur("234"), Map.of(SUPPLIER, SchoolPlan.eur("7.50")), nothing,
                Map.of("", SchoolPlan.eur("234")), Map.of(SUPPLIER, SchoolPlan.eur("45.89")));
        Policy policy = new Policy(SchoolPlan.EUR, List.of(), Optional.of(SchoolPlan.eur("300")), Map.of(), nothing,
                nothing, 0, false, true, false, Policy.LeaveAlone.NONE)
                .with(new Buying(Optional.empty(), Map.of(), new Tax(Optional.of(Percent.of(19)), true), false));
        Plan plan = new Plan("Money", SchoolPlan.DAY, policy, List.of(),
                List.of(new Purchase(offer, 12, List.of(), 0, 12)), List.of(), spending,
                new Optimality(0, 0, spending.total(), spending.total(), "none", List.of(), false), List.of());
        return new PlanBook(plan, Map.of(), new Market(List.of(offer), Map.of(SUPPLIER, new Supplier(SUPPLIER,
                Optional.of(SchoolPlan.eur("7.50")), Optional.empty(), Optional.empty()))), List.of(), List.of());
    }

    private XSSFWorkbook written() throws Exception {
        Path file = folder.resolve("order.xlsx");
        new OrderBook(book(), Progress.NONE).write(file);
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    private static double amount(Sheet sheet, String name, int column) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.toString().equals(name)) {
                    return row.getCell(column).getNumericCellValue();
                }
            }
        }
        throw new AssertionError(name + " must stand on sheet " + sheet.getSheetName());
    }

    @Test
    void taxStandsApartAndIsCountedAgainstABudgetMeantWithIt() throws Exception {
        try (XSSFWorkbook workbook = written()) {
            Sheet order = workbook.getSheet("Order Nord");
            assertEquals(241.50, amount(order, "Total", 7));
            assertEquals(45.89, amount(order, "Tax, rounded once for the order", 7));
            assertEquals(287.39, amount(order, "With tax", 7), 1e-9);
            assertEquals(12.61, amount(workbook.getSheet("Summary"), "Left of the budget", 3), 1e-9);
            assertEquals(300, amount(workbook.getSheet("Summary"), "Budget for goods and delivery, with tax", 3));
        }
    }

    @Test
    void theTotalOfFurtherPacksFollowsTheirNumber() throws Exception {
        try (XSSFWorkbook workbook = written()) {
            Row line = workbook.getSheet("Order Nord").getRow(5);
            while (line.getCell(1) == null || !line.getCell(1).toString().equals("1")) {
                line = line.getSheet().getRow(line.getRowNum() + 1);
            }
            line.getCell(4).setCellValue(9);
            XSSFFormulaEvaluator evaluator = new XSSFFormulaEvaluator(workbook);
            assertEquals(180.00, evaluator.evaluate(line.getCell(7)).getNumberValue());
            line.getCell(4).setCellValue(10);
            evaluator.clearAllCachedResultValues();
            assertEquals(198.00, evaluator.evaluate(line.getCell(7)).getNumberValue());
        }
    }
}
