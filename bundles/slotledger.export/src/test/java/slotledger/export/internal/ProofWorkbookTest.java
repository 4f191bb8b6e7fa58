package slotledger.export.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.export.internal.fixture.SchoolPlan;
import slotledger.model.finding.Finding;
import slotledger.model.plan.MachinePlan;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;
import slotledger.model.proof.ProofOutcome;

class ProofWorkbookTest {

    @TempDir
    private Path folder;

    private List<List<String>> sheet(Proof proof, String name) throws Exception {
        Path file = folder.resolve("proof.xlsx");
        new DefaultPlanFiles().writeProof(proof, file);
        List<List<String>> rows = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file); XSSFWorkbook workbook = new XSSFWorkbook(in)) {
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

    private static Proof proof() {
        List<MachinePlan> plans = SchoolPlan.book().plan().work();
        List<Finding> findings = SchoolPlan.book().findings();
        return new Proof("Lab refresh", SchoolPlan.DAY, List.of(
                new MachineProof(plans.get(0), ProofOutcome.DONE, List.of(), "As planned."),
                new MachineProof(plans.get(1), ProofOutcome.WORSE,
                        List.of(new MachineProof.Difference("DIMM3", "8 GB", "empty"),
                                new MachineProof.Difference("total", "20 GB", "=12")), "One module is missing."),
                new MachineProof(plans.get(2), ProofOutcome.NOT_SEEN, List.of(), "Not listed.")), findings);
    }

    @Test
    void theSummaryCountsEachOutcome() throws Exception {
        List<List<String>> rows = sheet(proof(), "Summary");
        assertEquals(List.of("Every opened machine ended as planned", "no"), rows.get(2));
        assertEquals(List.of("worse", "1", "1"),
                rows.stream().filter(row -> row.contains("worse")).findFirst().orElseThrow().subList(0, 3));
        assertEquals(List.of("All", "3", "3"),
                rows.stream().filter(row -> row.contains("All")).findFirst().orElseThrow());
    }

    @Test
    void differencesNameSlotPlannedAndFound() throws Exception {
        List<List<String>> rows = sheet(proof(), "Differences");
        assertEquals(List.of("LAB-02", "Main", "Lab 1", "worse", "DIMM3", "8 GB", "empty"), rows.get(3));
        assertEquals(List.of("LAB-02", "Main", "Lab 1", "worse", "total", "20 GB", "=12"), rows.get(4));
    }

    @Test
    void findingsSayWhatToDo() throws Exception {
        assertEquals("Look at the label inside the machine.", sheet(proof(), "Findings").get(3).get(6));
    }

    @Test
    void aProofOfNothingIsAWorkbookToo() throws Exception {
        assertEquals("Nothing differs.",
                sheet(new Proof("None", SchoolPlan.DAY, List.of(), List.of()), "Differences").get(3).get(0));
    }
}
