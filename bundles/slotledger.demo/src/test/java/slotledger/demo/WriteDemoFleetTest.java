package slotledger.demo;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteDemoFleetTest {

    private static final Path CHECKED_IN = Path.of("../../demo-fleet");

    @TempDir
    private Path folder;

    @Test
    void theCheckedInFilesAreWhatTheProgramWrites() throws IOException {
        WriteDemoFleet.write(folder);
        for (String name : List.of("fleet-night-college.csv", "shelf.csv")) {
            assertArrayEquals(Files.readAllBytes(folder.resolve(name)), Files.readAllBytes(CHECKED_IN.resolve(name)),
                    name);
        }
        for (String name : List.of("fleet.xlsx", "offers.xlsx")) {
            List<String> written = cells(folder.resolve(name));
            assertTrue(written.size() > 100, name);
            assertEquals(written, cells(CHECKED_IN.resolve(name)), name);
        }
    }

    private static List<String> cells(Path file) throws IOException {
        List<String> cells = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file); Workbook book = WorkbookFactory.create(in)) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        cells.add(sheet.getSheetName() + " " + cell.getAddress() + " " + cell);
                    }
                }
            }
        }
        return cells;
    }
}
