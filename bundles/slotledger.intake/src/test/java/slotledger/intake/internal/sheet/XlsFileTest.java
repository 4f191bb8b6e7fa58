package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.intake.IntakeException;

class XlsFileTest {

    @TempDir
    private Path folder;

    private Path workbook(int rows) throws Exception {
        Path file = folder.resolve("fleet.xls");
        try (HSSFWorkbook workbook = new HSSFWorkbook(); OutputStream out = Files.newOutputStream(file)) {
            HSSFSheet sheet = workbook.createSheet("Fleet");
            HSSFCellStyle unit = workbook.createCellStyle();
            unit.setDataFormat(workbook.createDataFormat().getFormat("0 \"GB\""));
            for (int i = 0; i < rows; i++) {
                sheet.createRow(i).createCell(0).setCellValue("PC " + i);
                Cell memory = sheet.getRow(i).createCell(1);
                memory.setCellValue(8);
                memory.setCellStyle(unit);
            }
            sheet.getRow(1).setZeroHeight(true);
            sheet.setColumnHidden(1, true);
            workbook.createSheet("Notes");
            workbook.setSheetHidden(1, true);
            workbook.write(out);
        }
        return file;
    }

    @Test
    void unitsOfNumberFormatsAndHiddenPartsAreSeen() throws Exception {
        Told told = Told.of(workbook(3));
        assertEquals("1: A=PC 0 B/N=8 GB\n2: A=PC 1 B/N=8 GB\n3: A=PC 2 B/N=8 GB\n", told.toString());
        assertEquals(Set.of(2), told.sheet().hiddenRows);
        assertEquals(Set.of(2), told.sheet().hiddenColumns);
        assertTrue(told.sheets.get(1).hidden);
    }

    @Test
    void aWorkbookCutOffAnywhereIsRefused() throws Exception {
        byte[] whole = Files.readAllBytes(workbook(2_000));
        String complete = Told.of(folder.resolve("fleet.xls")).toString();
        for (int length = 600; length < whole.length - 512; length += 4_001) {
            Path cut = Files.write(folder.resolve("cut.xls"), Arrays.copyOf(whole, length));
            try {
                assertEquals(complete, Told.of(cut).toString(), "what is read after %d bytes".formatted(length));
            } catch (IntakeException refused) {
                assertTrue(refused.finding().code().startsWith("workbook-"), refused.finding().code());
            }
        }
    }

    @Test
    void changedBytesNeverBringAnythingButAFinding() throws Exception {
        byte[] whole = Files.readAllBytes(workbook(50));
        for (int at = 512; at < whole.length; at += 53) {
            byte[] changed = whole.clone();
            changed[at] ^= (byte) 0xff;
            try {
                Told.of(Files.write(folder.resolve("changed.xls"), changed));
            } catch (IntakeException refused) {
                assertTrue(refused.finding().code().matches("(workbook|file)-.*"), refused.finding().code());
            }
        }
    }
}
