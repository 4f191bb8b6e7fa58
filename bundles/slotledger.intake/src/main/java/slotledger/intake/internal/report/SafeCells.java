package slotledger.intake.internal.report;

import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;

/** Writes texts that came from outside: always as text, never as a formula, never longer than a cell may be. */
public final class SafeCells {

    private static final int LONGEST = SpreadsheetVersion.EXCEL2007.getMaxTextLength();

    private SafeCells() {
    }

    public static void text(Cell cell, String text, CellStyle style) {
        cell.setCellValue(text.length() <= LONGEST ? text : text.substring(0, LONGEST - 3) + "...");
        if (style != null) {
            cell.setCellStyle(style);
        }
    }

    /** A spreadsheet program would compute such a text if a person edited the cell. */
    public static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    }
}
