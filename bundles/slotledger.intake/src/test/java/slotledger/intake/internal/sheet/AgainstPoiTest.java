package slotledger.intake.internal.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.NumberToTextConverter;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cell by cell the same as the usermodel of Apache POI 5.5.1, on files of POI and of LibreOffice. */
class AgainstPoiTest {

    private static final List<String> OFFICES =
            List.of("/usr/bin/soffice", "/usr/local/bin/soffice", "/opt/libreoffice/program/soffice");

    @TempDir
    private Path folder;

    @Test
    void anXlsxReadsAlike() throws Exception {
        compare(RichWorkbook.write(new XSSFWorkbook(), folder.resolve("rich.xlsx")));
    }

    @Test
    void anXlsReadsAlike() throws Exception {
        compare(RichWorkbook.write(new HSSFWorkbook(), folder.resolve("rich.xls")));
    }

    @Test
    void anXlsxWithTextsInPlaceReadsAlike() throws Exception {
        Path file = folder.resolve("stream.xlsx");
        try (SXSSFWorkbook workbook = new SXSSFWorkbook(10); var out = Files.newOutputStream(file)) {
            Sheet sheet = workbook.createSheet("Data");
            for (int i = 0; i < 200; i++) {
                Row row = sheet.createRow(i);
                row.createCell(0).setCellValue("PC " + i);
                row.createCell(1).setCellValue(i / 7.0);
                row.createCell(2).setCellValue(i % 2 == 0);
            }
            workbook.write(out);
        }
        compare(file);
    }

    @Test
    void whatLibreOfficeWritesReadsAlike() throws Exception {
        String office = OFFICES.stream().filter(path -> Files.isExecutable(Path.of(path))).findFirst().orElse("");
        Assumptions.assumeFalse(office.isEmpty(), "LibreOffice (soffice) is not installed");
        Path source = RichWorkbook.write(new XSSFWorkbook(), folder.resolve("rich.xlsx"));
        Path converted = Files.createDirectory(folder.resolve("converted"));
        for (String format : List.of("xlsx:Calc MS Excel 2007 XML", "xls:MS Excel 97")) {
            Process process = new ProcessBuilder(office, "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                    "--headless", "--convert-to", format, "--outdir", converted.toString(), source.toString())
                    .redirectErrorStream(true).redirectOutput(folder.resolve("office.log").toFile()).start();
            assertTrue(process.waitFor(120, TimeUnit.SECONDS), "LibreOffice does not end");
        }
        try (Stream<Path> files = Files.list(converted)) {
            List<Path> written = files.sorted().toList();
            assertEquals(2, written.size(), Files.readString(folder.resolve("office.log")));
            for (Path file : written) {
                compare(file);
            }
        }
    }

    private static void compare(Path file) throws Exception {
        Told told = Told.of(file);
        int cells = 0;
        try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
            assertEquals(workbook.getNumberOfSheets(), told.sheets.size());
            for (int i = 0; i < told.sheets.size(); i++) {
                Told.Sheet ours = told.sheets.get(i);
                Sheet theirs = workbook.getSheetAt(i);
                assertEquals(theirs.getSheetName(), ours.name);
                assertEquals(workbook.getSheetVisibility(i) != SheetVisibility.VISIBLE, ours.hidden, ours.name);
                cells += compareCells(file, ours, theirs);
                Set<CellRange> merged = new HashSet<>();
                theirs.getMergedRegions().forEach(area -> merged.add(new CellRange(area.getFirstRow() + 1,
                        area.getFirstColumn() + 1, area.getLastRow() + 1, area.getLastColumn() + 1)));
                assertEquals(merged, Set.copyOf(ours.merged));
                for (int column = 0; column < 40; column++) {
                    assertEquals(theirs.isColumnHidden(column), ours.hiddenColumns.contains(column + 1),
                            ours.name + " column " + column);
                }
            }
        }
        assertTrue(cells > 200, "cells compared: " + cells);
    }

    private static int compareCells(Path file, Told.Sheet ours, Sheet theirs) throws IOException {
        int count = 0;
        for (Row row : theirs) {
            boolean filled = false;
            for (Cell cell : row) {
                String place = "%s %s %s".formatted(file.getFileName(), ours.name, cell.getAddress());
                String expected = text(cell);
                slotledger.intake.internal.sheet.Cell found = ours.cell(row.getRowNum() + 1, cell.getColumnIndex() + 1);
                assertEquals(expected, found == null ? "" : found.text(), place);
                if (found != null && type(cell) == CellType.NUMERIC) {
                    assertEquals(cell.getNumericCellValue(), found.number(), place);
                }
                filled |= found != null;
                count += found == null ? 0 : 1;
            }
            if (filled) {
                int number = row.getRowNum() + 1;
                assertEquals(row.getZeroHeight(), ours.hiddenRows.contains(number), "row " + number);
            }
        }
        assertEquals(count, ours.rows.values().stream().mapToInt(List::size).sum(), "no cells beside theirs");
        return count;
    }

    private static CellType type(Cell cell) {
        return cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
    }

    private static String text(Cell cell) {
        return switch (type(cell)) {
            case STRING -> cell.getStringCellValue();
            case BOOLEAN -> cell.getBooleanCellValue() ? "TRUE" : "FALSE";
            case ERROR -> FormulaError.forInt(cell.getErrorCellValue()).getString();
            case NUMERIC -> isDay(cell) ? day(cell) : NumberToTextConverter.toText(cell.getNumericCellValue());
            default -> "";
        };
    }

    private static boolean isDay(Cell cell) {
        return DateUtil.isCellDateFormatted(cell) && cell.getNumericCellValue() < 2_958_466;
    }

    /** POI knows no day of its own for a time of day, and rounds to milliseconds. */
    private static String day(Cell cell) {
        var moment = DateUtil.getLocalDateTime(cell.getNumericCellValue(), false, true);
        var exact = moment.plusNanos(500_000_000).truncatedTo(java.time.temporal.ChronoUnit.SECONDS);
        String date = exact.toLocalDate().toString();
        String time = exact.toLocalTime().toString();
        if (time.equals("00:00")) {
            return date;
        }
        return cell.getNumericCellValue() < 1 ? time : date + " " + time;
    }
}
