package slotledger.intake.internal.report;

import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/** How a wide sheet comes out on paper, and that long texts are in sight. */
public final class PrintPages {

    /** Letters of a sentence for each digit a column is wide; measured on texts of our sheets. */
    private static final double LETTERS = 1.1;
    /** Points; a spreadsheet program allows a row no more than 409. */
    private static final float HIGHEST = 400;

    private PrintPages() {
    }

    /** Makes a row at least as high as a wrapped text needs; programs don't do it for rows that are streamed. */
    static void makeRoom(Row row, String text, int width) {
        int lines = 0;
        for (String part : text.split("\n", -1)) {
            lines += 1 + (int) (part.length() / (LETTERS * Math.max(1, width - 1)));
        }
        float line = row.getSheet().getDefaultRowHeightInPoints();
        if (lines > 1 && lines * line > row.getHeightInPoints()) {
            row.setHeightInPoints(Math.min(HIGHEST, lines * line));
        }
    }

    /** All columns on A4 landscape, the headings again on every page. */
    public static void landscape(Sheet sheet, int headingRow) {
        sheet.setFitToPage(true);
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(true);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.setRepeatingRows(new CellRangeAddress(headingRow, headingRow, -1, -1));
        sheet.getFooter().setCenter("&A");
        sheet.getFooter().setRight("Page &P of &N");
    }
}
