package slotledger.demo;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;

/** Writes rows into a sheet one below the other. */
final class SheetPen {

    private final Sheet sheet;
    private final CellStyle heading;
    private int next;

    SheetPen(Workbook book, String name) {
        sheet = book.createSheet(name);
        heading = book.createCellStyle();
        Font bold = book.createFont();
        bold.setBold(true);
        heading.setFont(bold);
        heading.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
        heading.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    Sheet sheet() {
        return sheet;
    }

    int lastRow() {
        return next - 1;
    }

    void blank() {
        next++;
    }

    Row row(Object... values) {
        Row row = sheet.createRow(next++);
        for (int i = 0; i < values.length; i++) {
            set(row, i, values[i]);
        }
        return row;
    }

    void headings(Object... values) {
        for (Cell cell : row(values)) {
            cell.setCellStyle(heading);
        }
    }

    void merge(int firstColumn, int lastColumn) {
        sheet.addMergedRegion(new CellRangeAddress(next - 1, next - 1, firstColumn, lastColumn));
    }

    static void set(Row row, int column, Object value) {
        if (value instanceof Number number) {
            row.createCell(column).setCellValue(number.doubleValue());
        } else if (value != null && !value.toString().isEmpty()) {
            row.createCell(column).setCellValue(value.toString());
        }
    }

    void widths(int... characters) {
        for (int i = 0; i < characters.length; i++) {
            sheet.setColumnWidth(i, characters[i] * 256);
        }
    }
}
