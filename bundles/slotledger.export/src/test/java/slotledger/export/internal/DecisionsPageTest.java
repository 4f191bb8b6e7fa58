package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.PlanBook;
import slotledger.export.internal.fixture.Modules;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.export.internal.order.OrderBook;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Insights;
import slotledger.model.plan.Plan;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Choices;
import slotledger.model.trade.ExchangeRate;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Taste;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;

class DecisionsPageTest {

    private static final Place HERE = Place.ofRow("choices.yaml", "", 4);

    @TempDir
    private Path folder;

    private XSSFWorkbook written(PlanBook book) throws Exception {
        Path file = folder.resolve("order.xlsx");
        new OrderBook(book, Progress.NONE).write(file);
        try (InputStream in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    private static List<String> lines(Sheet sheet) {
        List<String> lines = new ArrayList<>();
        for (Row row : sheet) {
            List<String> texts = new ArrayList<>();
            for (Cell cell : row) {
                texts.add(new DataFormatter().formatCellValue(cell));
            }
            lines.add(String.join(" | ", texts));
        }
        return lines;
    }

    private static Plan with(Plan plan, Policy policy, Choices choices, List<Finding> remarks) {
        return new Plan(plan.title(), plan.date(), policy, plan.machines(), plan.purchases(), plan.leftovers(),
                plan.spending(), plan.optimality(), remarks, choices, Insights.NONE);
    }

    @Test
    void eachDecisionStandsWithWhatBecameOfIt() throws Exception {
        PlanBook book = SchoolPlan.book();
        Offer bought = book.plan().purchases().get(0).offer();
        AssetTag tag = book.plan().machines().get(0).machine().tag();
        Choices choices = new Choices(List.of(new Pin(tag, Map.of(), HERE)), List.of(
                new Taste(Taste.Attitude.FORBID, Taste.About.SUPPLIER, "Elder", List.of(), 0, HERE),
                new Taste(Taste.Attitude.PREFER, Taste.About.SUPPLIER, bought.supplier(), List.of(), 3, HERE)),
                Set.of("nowhere / 1"), OptionalInt.of(99));
        Figures now = Figures.of(book.plan());
        Figures dearer = new Figures(now.onTarget() + 1, now.weight() + 3, now.weightBound() + 9, now.payable(),
                now.cost().plus(SchoolPlan.eur("4")), now.costBound());
        Plan plan = with(book.plan(), book.plan().policy(), choices, List.of()).withInsights(new Insights(
                Optional.empty(), List.of(), List.of(), List.of(), List.of(
                        new WithoutChoice(WithoutChoice.ofUniform("nowhere / 1"), new Figures(now.onTarget(),
                                now.weight(), now.weight(), now.payable(), now.cost(), now.cost())),
                        new WithoutChoice(WithoutChoice.ofMostOpened(99), dearer))));
        try (XSSFWorkbook workbook = written(new PlanBook(plan, book.boards(), book.market(), List.of(), List.of()))) {
            List<String> lines = lines(workbook.getSheet("What people decided"));
            String ask = "Not computed. Plan with --insights to see it here.";
            int all = plan.purchases().stream().mapToInt(line -> line.packs()).sum();
            int preferred = plan.purchases().stream()
                    .filter(line -> line.offer().supplier().equals(bought.supplier()))
                    .mapToInt(line -> line.packs()).sum();
            assertTrue(lines.contains("Preferred | rather supplier %s, worth 3 %% | %d of the %d packs bought are of it"
                    .formatted(bought.supplier(), preferred, all) + " | " + ask + " | choices.yaml, line 4"),
                    lines.toString());
            assertTrue(lines.contains("Forbidden | no supplier Elder | nothing of it is bought | " + ask
                    + " | choices.yaml, line 4"), lines.toString());
            assertTrue(lines.contains("Uniform room | nowhere / 1 | 0 machines stand there, 0 of them opened"
                    + " | as many targets, the same cost | choices"), lines.toString());
            assertTrue(lines.contains("Machines opened | at most 99 | %d machines are opened"
                    .concat(" | 3 more by weight on target, EUR 4.00 more")
                    .formatted(plan.work().size()) + " (a better one may exist) | choices"), lines.toString());
            assertEquals(1, lines.stream().filter(line -> line.startsWith("Pin | " + tag)).count());
            assertEquals(2, lines.stream().filter(line -> line.startsWith("Left alone | ")).count());
        }
    }

    @Test
    void whereNobodyDecidedAnythingThereIsNoSuchSheet() throws Exception {
        PlanBook book = SchoolPlan.book();
        Policy policy = book.plan().policy();
        Policy free = new Policy(policy.currency(), policy.targets(), policy.budget(), policy.costCentreBudgets(),
                policy.perMachine(), policy.perModule(), policy.sparePercent(), policy.atLeastOneSpare(),
                policy.reusePulled(), policy.harvest(), Policy.LeaveAlone.NONE);
        Plan plan = with(book.plan(), free, Choices.NONE, List.of());
        try (XSSFWorkbook workbook = written(new PlanBook(plan, book.boards(), book.market(), List.of(), List.of()))) {
            assertNull(workbook.getSheet("What people decided"));
            assertNull(workbook.getSheet("What changed"));
        }
    }

    @Test
    void offersThatCouldNotBeUsedSayWhyAndForeignPricesAtWhichRate() throws Exception {
        PlanBook book = SchoolPlan.book();
        Currency dollar = Currency.getInstance("USD");
        Buying buying = new Buying(Optional.empty(), Map.of("USD", new ExchangeRate(new BigDecimal("0.5"),
                Optional.of(LocalDate.of(2026, 11, 2)))), Tax.UNSAID, false);
        Plan plan = with(book.plan(), book.plan().policy().with(buying), Choices.NONE, List.of(
                new Finding(Severity.WARNING, "offer-too-late", HERE, Optional.empty(), "",
                        "The offer X/1 (a module) arrives late.", "", "Ask.")));
        List<Offer> offers = new ArrayList<>(book.market().offers());
        for (String id : List.of("X/1", "X/10")) {
            offers.add(new Offer(id, "X", id.substring(2), Optional.empty(), Modules.DDR4_8, 1,
                    List.of(new PriceStep(1, new Money(2400, dollar)), new PriceStep(9, new Money(2200, dollar))),
                    PriceRule.FURTHER_PACKS, OptionalInt.empty(), OptionalInt.empty(), Optional.empty(),
                    Optional.empty(), Optional.empty(), HERE));
        }
        Map<String, Supplier> suppliers = new HashMap<>(book.market().suppliers());
        suppliers.put("X", new Supplier("X", Optional.empty(), Optional.empty(), Optional.empty()));
        Market market = new Market(offers, suppliers).in(plan.policy());
        try (XSSFWorkbook workbook = written(new PlanBook(plan, book.boards(), market, List.of(), List.of()))) {
            List<String> lines = lines(workbook.getSheet("Considered"));
            assertTrue(lines.stream().anyMatch(line -> line.startsWith("too late for the needed-by date | X | 1 | ")
                    && line.contains("EUR 12.00") && line.contains("further packs | USD 24.00 at 0.5 of 2026-11-02")),
                    String.join("\n", lines));
            assertTrue(lines.stream().anyMatch(line -> line.startsWith("no | X | 10 | ")), String.join("\n", lines));
        }
    }

    @Test
    void anEarlierPlanMakesAPageOfWhatChanged() throws Exception {
        PlanBook book = SchoolPlan.book();
        Plan earlier = with(book.plan(), book.plan().policy().withBudget(Optional.of(SchoolPlan.eur("77"))),
                Choices.NONE, List.of());
        try (XSSFWorkbook workbook = written(new PlanBook(book.plan(), book.boards(), book.market(), List.of(),
                List.of(), Optional.of(earlier)))) {
            List<String> lines = lines(workbook.getSheet("What changed"));
            assertTrue(lines.contains("Nothing is bought or done differently."), lines.toString());
            assertTrue(lines.stream().anyMatch(line -> line.startsWith("budget | ") && line.contains("EUR 77.00")),
                    lines.toString());
        }
    }
}
