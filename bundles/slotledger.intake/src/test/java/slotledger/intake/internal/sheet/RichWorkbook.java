package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;

/** A workbook with some of everything, written by POI: the outside reference for what is in a cell. */
final class RichWorkbook {

    private static final double[] NUMBERS = {0, 8, -8, 0.1, 0.1 + 0.2, 1.0 / 3, 2.0 / 3, 1e21, 1e-5, 1.5e-10,
        123456.789, 4294967296.0, 1e15, 123456789012345678.0, 2666.6666666, 25.6, 1e100, -1e-7, 99.99,
        12.30, 0.07, 1.005};
    private static final String[] TEXTS = {"8GB", " padded ", "two\nlines", "<tag> & \"quotes\"", "\u6771\u4eac",
        "\uD83D\uDE00", "=SUM(A1)", "\u202eabc", "a\tb", "_x0041_", "x".repeat(32_767), "\u00a0", "'apostrophe"};
    private static final String[] FORMATS = {"General", "0.00", "yyyy-mm-dd", "d/m/yy h:mm", "[h]:mm:ss", "mmm-yy",
        "#,##0.00;[Red]-#,##0.00", "0.00E+00", "# ?/?", "@"};

    private RichWorkbook() {
    }

    static Path write(Workbook workbook, Path file) throws IOException {
        Sheet all = workbook.createSheet("All sorts");
        CellStyle[] styles = new CellStyle[FORMATS.length];
        for (int i = 0; i < FORMATS.length; i++) {
            styles[i] = workbook.createCellStyle();
            styles[i].setDataFormat(workbook.createDataFormat().getFormat(FORMATS[i]));
        }
        for (int i = 0; i < NUMBERS.length; i++) {
            Row row = all.createRow(i * 3);
            for (int j = 0; j < FORMATS.length; j++) {
                Cell cell = row.createCell(j * 2);
                cell.setCellValue(NUMBERS[i]);
                cell.setCellStyle(styles[j]);
            }
        }
        for (int i = 0; i < TEXTS.length; i++) {
            all.createRow(i * 3 + 1).createCell(i).setCellValue(TEXTS[i]);
        }
        all.setColumnHidden(3, true);
        all.addMergedRegion(new CellRangeAddress(70, 72, 1, 4));
        Row hidden = all.createRow(80);
        hidden.setZeroHeight(true);
        hidden.createCell(0).setCellValue(true);
        hidden.createCell(1).setCellErrorValue(FormulaError.DIV0.getCode());
        hidden.createCell(2).setBlank();
        formulas(workbook);
        random(workbook.createSheet("Random"));
        workbook.createSheet("Empty");
        workbook.setSheetHidden(2, true);
        workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
        try (OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
        workbook.close();
        return file;
    }

    private static void formulas(Workbook workbook) {
        Sheet sheet = workbook.createSheet("Formulas");
        String[] formulas = {"4+4", "\"8\"&\"GB\"", "1/0", "1=1", "NA()", "\"\"", "SUM('All sorts'!A1:A4)", "1/3"};
        for (int i = 0; i < formulas.length; i++) {
            sheet.createRow(i).createCell(i).setCellFormula(formulas[i]);
        }
    }

    private static void random(Sheet sheet) {
        Random random = new Random(42);
        for (int i = 0; i < 400; i++) {
            Row row = sheet.createRow(i);
            for (int j = 0; j < 12; j++) {
                switch (random.nextInt(4)) {
                    case 0 -> row.createCell(j).setCellValue("PC-" + random.nextInt(1000));
                    case 1 -> row.createCell(j).setCellValue(random.nextInt(100_000));
                    case 2 -> row.createCell(j)
                            .setCellValue(random.nextDouble() * Math.pow(10, random.nextInt(20) - 8));
                    default -> { }
                }
            }
        }
    }
}
