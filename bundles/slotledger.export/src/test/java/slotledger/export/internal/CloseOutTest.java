package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.delivery.TradeState;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.LeftOver;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.OpenPoints;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;

class CloseOutTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 9);

    @TempDir
    Path folder;

    private final Plan plan = SchoolPlan.book().plan();
    private final List<TradeEvent> events = new ArrayList<>();

    @Test
    void moneyIsSharedBetweenWhatArrivedAndWhatIsToBeClaimedToTheCent() {
        OrderStatus.Line line = status().lines().get(0);
        events.add(new TradeEvent.Received(1, DAY, line.purchase().offer().id(), line.purchase().modules() - 1, 0, 1,
                true, ""));
        for (CloseOut.LineMoney each : close(Optional.empty()).money()) {
            assertEquals(each.ordered(), each.arrived().plus(each.claim()));
        }
        CloseOut.LineMoney first = close(Optional.empty()).money().get(0);
        assertFalse(first.claim().isZero());
        assertTrue(close(Optional.empty()).money().stream().skip(1).allMatch(each -> each.arrived().isZero()));
    }

    @Test
    void withoutAProofNothingIsProvedAndWithOneAllThatEndedAsPlannedIs() {
        assertEquals(0, close(Optional.empty()).all().proved());
        CloseOut.RoleCount all = close(Optional.of(proof(ProofOutcome.DONE))).all();
        assertEquals(all.planned(), all.proved());
        assertTrue(all.planned() > all.before());
        CloseOut.RoleCount none = close(Optional.of(proof(ProofOutcome.NOT_DONE))).all();
        assertEquals(none.before(), none.proved());
    }

    @Test
    void whatIsLeftOverLiesInTheBagOfItsMachineOrIsStillInIt() {
        List<LeftOver> proved = LeftOver.of(close(Optional.of(proof(ProofOutcome.DONE))));
        List<LeftOver> before = LeftOver.of(close(Optional.empty()));
        assertTrue(proved.stream().allMatch(each -> each.inside().isEmpty()));
        assertTrue(before.stream().allMatch(each -> each.bags().isEmpty()));
        int planned = plan.leftovers().stream().mapToInt(each -> each.count()).sum();
        assertEquals(planned, proved.stream().mapToInt(LeftOver::count).sum());
        assertEquals(planned, before.stream().mapToInt(LeftOver::count).sum());
    }

    @Test
    void theReportShowsDeviationsCausesAndOpenPoints() throws Exception {
        Path file = folder.resolve("close-out.pdf");
        new DefaultPlanFiles().writeCloseReport(close(Optional.of(proof(ProofOutcome.DONE))), file);
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            for (String part : List.of("Open points", "Machines on target", "Money, without tax", "Deviations",
                    "runs slower than planned", "set memory to automatic", "Leftovers", "Approved by nobody")) {
                assertTrue(text.contains(part), part + " in " + text);
            }
        }
    }

    @Test
    void theWorkbookHasAChartAndNoTextOfUsersIsAFormula() throws Exception {
        Path file = folder.resolve("close-out.xlsx");
        new DefaultPlanFiles().writeCloseBook(close(Optional.of(proof(ProofOutcome.DONE))), file);
        try (XSSFWorkbook workbook = new XSSFWorkbook(file.toFile())) {
            assertEquals(1, workbook.getSheet("Summary").getDrawingPatriarch().getCharts().size());
            XSSFSheet deviations = workbook.getSheet("Deviations");
            boolean found = false;
            for (Row row : deviations) {
                for (Cell cell : row) {
                    assertEquals(CellType.STRING, cell.getCellType());
                    found |= cell.getStringCellValue().equals("=2+3") && cell.getCellStyle().getQuotePrefixed();
                }
            }
            assertTrue(found);
        }
    }

    @Test
    void everyMachineIsOnTheAssetListWithWhatItHoldsNow() throws Exception {
        Path file = folder.resolve("assets.csv");
        new DefaultPlanFiles().writeAssets(close(Optional.of(proof(ProofOutcome.DONE))), file);
        List<String> lines = Files.readAllLines(file);
        assertEquals(plan.machines().size() + 1, lines.size());
        MachinePlan first = plan.work().get(0);
        String slot = first.after().contents().keySet().iterator().next();
        String line = lines.stream().filter(each -> each.startsWith("\"" + first.machine().tag() + "\"")).findFirst()
                .orElseThrow();
        assertTrue(line.contains("\"" + slot + ": " + first.after().in(slot).toString().replace(",", "")), line);
        assertTrue(lines.stream().noneMatch(each -> each.contains("\"=") || each.contains("\"+")));
    }

    @Test
    void openPointsNameWhatSomebodyMustSeeTo() {
        List<String> points = OpenPoints.of(close(Optional.empty()));
        assertTrue(points.get(0).contains("nothing is proved"), points.toString());
        assertTrue(points.stream().anyMatch(point -> point.contains("is put back: beeps")), points.toString());
        assertTrue(points.stream().anyMatch(point -> point.contains("modules are missing")), points.toString());
    }

    private ClosingProof proof(ProofOutcome opened) {
        List<MachineProof> machines = plan.machines().stream().map(machine -> new MachineProof(machine,
                machine.isOpened() ? opened : ProofOutcome.DONE, List.of(), "")).toList();
        AssetTag tag = plan.work().get(0).machine().tag();
        return new ClosingProof(new Proof(plan.title(), DAY, machines, List.of()),
                List.of(new Deviation(tag, Deviation.Kind.RATE, "", "2400 MT/s", "=2+3", "")), List.of(), 0);
    }

    private OrderStatus status() {
        List<TradeState.Happened> happened = new ArrayList<>();
        events.forEach(event -> happened.add(new TradeState.Happened(happened.size() + 1, Instant.EPOCH, "a", event)));
        return OrderStatus.of(1, plan, new TradeState(happened));
    }

    private CloseOut close(Optional<ClosingProof> proof) {
        List<Job> jobs = new ArrayList<>();
        plan.work().forEach(machine -> jobs.add(Job.planned(machine.machine().tag(), 1)));
        jobs.set(0, new Job(jobs.get(0).machine(), 1, JobState.PUT_BACK, "beeps", Set.of(), Map.of("S1", "7"),
                List.of(), Optional.empty()));
        return new CloseOut(DAY, status(), jobs, proof);
    }
}
