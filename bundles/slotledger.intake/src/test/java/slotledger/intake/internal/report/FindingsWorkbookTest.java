package slotledger.intake.internal.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.DefaultIntake;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.task.Progress;

class FindingsWorkbookTest {

    @TempDir
    Path folder;

    private XSSFWorkbook written(String csv) throws IOException, IntakeException {
        Path file = Files.writeString(folder.resolve("fleet.csv"), csv);
        DefaultIntake intake = DefaultIntake.plain();
        Reading<ObservedFleet> reading = intake.readFleet(List.of(file), Optional.empty(), Progress.NONE);
        Path target = folder.resolve("findings.xlsx");
        intake.writeFindings(List.of(file), reading.findings(), target);
        try (InputStream in = Files.newInputStream(target)) {
            return new XSSFWorkbook(in);
        }
    }

    @Test
    void theSheetIsMirroredWithNotesAndWords() throws IOException, IntakeException {
        try (XSSFWorkbook book = written(
                "Asset tag,Model,RAM 1,RAM 2\nA1,K10,4GB,strange\nA1,K10,4GB,4GB\nA3,K10,4GB,4GB\n")) {
            assertEquals(List.of("Findings", "fleet.csv"), List.of(book.getSheetName(0), book.getSheetName(1)));
            XSSFSheet mirror = book.getSheetAt(1);
            assertEquals("strange", mirror.getRow(1).getCell(3).getStringCellValue());
            assertTrue(mirror.getRow(1).getCell(3).getCellComment().getString().getString().contains("not understood"));
            assertEquals("warning", mirror.getRow(1).getCell(4).getStringCellValue());
            assertEquals("error", mirror.getRow(2).getCell(4).getStringCellValue());
            assertEquals(null, mirror.getRow(3).getCell(4));
            assertNotNull(mirror.getPaneInformation());
            assertTrue(mirror.getCTWorksheet().isSetAutoFilter());
            Row warning = book.getSheetAt(0).getRow(2);
            assertEquals("warning", warning.getCell(0).getStringCellValue());
            assertEquals("'fleet.csv'!D2", warning.getCell(4).getHyperlink().getAddress());
        }
    }

    @Test
    void errorsStandAboveWarningsAndEveryTextIsInSight() throws IOException, IntakeException {
        try (XSSFWorkbook book = written("Asset tag,Model,RAM 1,RAM 2\nA1,K10,4GB,strange\nA1,K10,4GB,4GB\n")) {
            Sheet list = book.getSheetAt(0);
            assertEquals("error", list.getRow(1).getCell(0).getStringCellValue());
            assertEquals("warning", list.getRow(2).getCell(0).getStringCellValue());
            assertTrue(list.getRow(1).getHeightInPoints() > list.getDefaultRowHeightInPoints());
        }
    }

    @Test
    void noTextBecomesAFormula() throws IOException, IntakeException {
        try (XSSFWorkbook book = written(
                "Asset tag,Model,Room\n=1+1,@SUM(A1),+2\n\"=cmd|' /C calc'!A0\",-1-1,\"=1\"\n")) {
            int texts = 0;
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        assertTrue(cell.getCellType() != CellType.FORMULA, cell.getAddress().toString());
                        boolean looks = cell.getCellType() == CellType.STRING
                                && SafeCells.looksLikeFormula(cell.getStringCellValue());
                        if (looks) {
                            texts++;
                            assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.getStringCellValue());
                        }
                    }
                }
            }
            assertTrue(texts >= 6, "texts that look like formulas: " + texts);
        }
    }

    @Test
    void nothingIsLeftBesideTheWorkbook() throws IOException, IntakeException {
        try (XSSFWorkbook book = written("Asset tag,Model\nA1,K10\n"); Stream<Path> files = Files.list(folder)) {
            assertEquals(2, book.getNumberOfSheets());
            assertEquals(List.of("findings.xlsx", "fleet.csv"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }
}
