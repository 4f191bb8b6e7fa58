package slotledger.intake.internal.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.DefaultIntake;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

class TemplatesTest {

    @TempDir
    Path folder;

    private final DefaultIntake intake = DefaultIntake.plain();

    @BeforeEach
    void write() throws IntakeException {
        assertEquals(List.of("fleet.xlsx", "offers.xlsx", "shelf.xlsx", "policy.yaml", "mapping.txt",
                "instead-of-policy-yaml/policy.xlsx"),
                intake.writeTemplates(folder).stream()
                        .map(file -> folder.relativize(file).toString().replace('\\', '/')).toList());
    }

    private Path file(String name) {
        return folder.resolve(name);
    }

    /** The example rows as somebody would have typed them. */
    private Path filledIn(String name) throws IOException {
        Path copy = folder.resolve("filled-" + name);
        try (InputStream in = Files.newInputStream(file(name)); XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(copy)) {
            for (Row row : book.getSheetAt(0)) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING) {
                        cell.setCellValue(cell.getStringCellValue().replace("EXAMPLE", "X"));
                    }
                }
            }
            book.write(out);
        }
        return copy;
    }

    private static List<String> above(Severity least, List<Finding> findings) {
        return findings.stream().filter(finding -> finding.severity().compareTo(least) <= 0).map(Finding::toString)
                .toList();
    }

    @Test
    void theExampleRowIsSkippedWithANote() throws IntakeException {
        Reading<ObservedFleet> reading =
                intake.readFleet(List.of(file("fleet.xlsx")), Optional.empty(), Progress.NONE);
        assertEquals(0, reading.value().machines().size());
        assertEquals(List.of("example-row", "sheet-without-table"),
                reading.findings().stream().map(Finding::code).toList());
    }

    @Test
    void theExampleOfTheFleetIsReadWithoutComplaint() throws IntakeException, IOException {
        Reading<ObservedFleet> reading = intake.readFleet(List.of(filledIn("fleet.xlsx")), Optional.empty(),
                Progress.NONE);
        assertEquals(1, reading.value().machines().size());
        assertEquals(List.of(), above(Severity.WARNING, reading.findings()));
        assertEquals("[Slot 1=4 GB DDR4-2666, 1Rx8, Slot 2=4 GB DDR4-2666, 1Rx8, Slot 3=empty, Slot 4=empty]",
                reading.value().machines().get(0).slots().stream()
                        .map(slot -> slot.label().orElse("") + "=" + slot.content())
                        .toList().toString());
        assertEquals(List.of(), reading.columns().get(0).columns().stream().filter(column -> column.field().isEmpty())
                .toList());
    }

    @Test
    void theExampleOfTheOffersIsReadWithoutComplaint() throws IntakeException, IOException {
        Reading<Market> reading = intake.readOffers(List.of(filledIn("offers.xlsx")), Progress.NONE);
        assertEquals(List.of(), above(Severity.WARNING, reading.findings()));
        assertEquals(List.of("1 EUR 21.90", "10 EUR 20.50", "50 EUR 19.90"), reading.value().offers().get(0).steps()
                .stream().map(step -> step.fromPacks() + " " + step.perPack()).toList());
        assertEquals(List.of(), reading.columns().get(0).columns().stream().filter(column -> column.field().isEmpty())
                .toList());
    }

    @Test
    void theExampleOfTheShelfIsReadWithoutComplaint() throws IntakeException, IOException {
        Reading<Shelf> reading = intake.readShelf(List.of(filledIn("shelf.xlsx")), Progress.NONE);
        assertEquals(List.of(), above(Severity.WARNING, reading.findings()));
        assertEquals("{4 GB DDR4-2400 DIMM, 1Rx8, non-ECC, unbuffered=12}", reading.value().pieces().toString());
    }

    @Test
    void bothPoliciesSayTheSame() throws IntakeException {
        Reading<Policy> text = intake.readPolicy(file("policy.yaml"));
        Reading<Policy> sheet = intake.readPolicy(file("instead-of-policy-yaml/policy.xlsx"));
        assertEquals(text.value(), sheet.value());
        assertEquals(List.of(), above(Severity.NOTE, text.findings()));
        assertEquals(List.of("sheet-without-table"), sheet.findings().stream().map(Finding::code).toList());
        assertEquals(3, text.value().targets().size());
    }

    @Test
    void theMappingTemplateMapsNothing() throws IntakeException {
        Reading<ObservedFleet> reading = intake.readFleet(List.of(file("fleet.xlsx")),
                Optional.of(file("mapping.txt")), Progress.NONE);
        assertEquals(List.of("example-row", "sheet-without-table"),
                reading.findings().stream().map(Finding::code).toList());
    }
}
