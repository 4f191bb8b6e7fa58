package slotledger.export.internal.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import slotledger.export.internal.text.Texts;
import slotledger.model.unit.Money;

/** A sheet that is filled row by row. Texts of users never become formulas. */
public final class Page {

    private static final int CHARACTER = 256;
    private static final int FOOTER_LIMIT = 80;
    private static final float LINE_HEIGHT = 13.5f;
    /** Above and below the text together, in points, so that it keeps clear of the lines. */
    private static final float ROOM = 4;
    /** Letters of a sentence for each digit a column is wide; measured on texts of our sheets. */
    private static final double LETTERS = 1.06;
    /** Inches; office printers reach as far as this (from memory). */
    private static final double MARGIN = 0.4;
    private static final double FOOT_MARGIN = 0.7;

    private final XSSFSheet sheet;
    private final Looks looks;
    private final int[] widths;
    private XSSFRow row;
    private int lines = 1;
    private int headerRow = -1;
    private int kept;
    private final List<Integer> headings = new ArrayList<>();

    Page(XSSFSheet sheet, Looks looks, int[] widths) {
        this.sheet = sheet;
        this.looks = looks;
        this.widths = widths.clone();
        for (int i = 0; i < widths.length; i++) {
            sheet.setColumnWidth(i, widths[i] * CHARACTER);
        }
    }

    void setUp(String title) {
        sheet.getPrintSetup().setLandscape(true);
        sheet.getPrintSetup().setPaperSize(PaperSize.A4_PAPER);
        sheet.setFitToPage(true);
        sheet.getPrintSetup().setFitWidth((short) 1);
        sheet.getPrintSetup().setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, MARGIN);
        sheet.setMargin(PageMargin.RIGHT, MARGIN);
        sheet.setMargin(PageMargin.TOP, MARGIN);
        sheet.setMargin(PageMargin.BOTTOM, FOOT_MARGIN);
        // "&" begins a code in headers and footers (ECMA-376 part 1, 18.3.1.46)
        sheet.getFooter().setLeft(Texts.shortened(title, FOOTER_LIMIT).replace("&", "&&"));
        sheet.getFooter().setCenter("&A");
        sheet.getFooter().setRight("Page &P of &N");
    }

    /** Makes the whole sheet fit one page of paper. */
    public Page onOnePage() {
        sheet.getPrintSetup().setFitHeight((short) 1);
        return this;
    }

    /** Keeps the first columns in sight, and prints them again on each of so many pages of paper side by side. */
    public Page keep(int columns, int pages) {
        kept = columns;
        sheet.getPrintSetup().setFitWidth((short) pages);
        for (int page = 1; page < pages; page++) {
            sheet.setColumnBreak(columns - 1 + (widths.length - columns) * page / pages);
        }
        return this;
    }

    /** Goes on to a new row. */
    public Page next() {
        fitHeight();
        row = sheet.createRow(sheet.getLastRowNum() + 1);
        lines = 1;
        return this;
    }

    /** Leaves a row out. */
    public Page gap() {
        return next();
    }

    /** A row of its own. */
    public Page title(String text) {
        next().text(0, text, Look.TITLE);
        row.setHeightInPoints(24);
        return this;
    }

    /** A row of its own. */
    public Page section(String text) {
        next().text(0, text, Look.SECTION);
        row.setHeightInPoints(18);
        return this;
    }

    /** A row of its own, running on over the columns beside it. */
    public Page note(String text) {
        return next().text(0, text, Look.NOTE);
    }

    /** A long text over all columns of this row, wrapped. */
    public Page across(String text) {
        next().text(0, text, Look.TEXT);
        if (widths.length > 1) {
            sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), 0, widths.length - 1));
        }
        int all = 0;
        for (int width : widths) {
            all += width;
        }
        lines = Math.max(1, linesOf(text, all));
        return this;
    }

    /** The headings of the table a sheet is about: repeated on every page of paper, and always in sight. */
    public Page header(String... headings) {
        subheader(headings);
        headerRow = row.getRowNum();
        return this;
    }

    /** The headings of one table among several. */
    public Page subheader(String... names) {
        next();
        headings.add(row.getRowNum());
        for (int i = 0; i < names.length; i++) {
            text(i, names[i], Look.HEADER);
        }
        return this;
    }

    public Page text(int column, String text) {
        return text(column, text, Look.TEXT);
    }

    /** A text that runs over several columns. */
    public Page text(int first, int last, String text) {
        text(first, "");
        sheet.addMergedRegion(new CellRangeAddress(row.getRowNum(), row.getRowNum(), first, last));
        row.getCell(first).setCellValue(Texts.cell(text));
        return this;
    }

    public Page text(int column, String text, Look look) {
        XSSFCell cell = row.createCell(column);
        String clean = Texts.cell(text);
        cell.setCellValue(clean);
        cell.setCellStyle(looksLikeFormula(clean) ? looks.quoted(look) : looks.get(look));
        if (look == Look.TEXT || look == Look.STRONG || look == Look.HEADER
                || look.compareTo(Look.CELL_PASSES) >= 0) {
            lines = Math.max(lines, linesOf(clean, column < widths.length ? widths[column] : 10));
        }
        return this;
    }

    public Page count(int column, long count) {
        return number(column, count, Look.COUNT);
    }

    public Page number(int column, double number, Look look) {
        XSSFCell cell = row.createCell(column);
        cell.setCellValue(number);
        cell.setCellStyle(looks.get(look));
        return this;
    }

    public Page money(int column, Money money) {
        return number(column, money.amount().doubleValue(), Look.MONEY);
    }

    public Page date(int column, Optional<LocalDate> day) {
        XSSFCell cell = row.createCell(column);
        cell.setCellStyle(looks.get(Look.DATE));
        // Spreadsheet dates begin in 1900.
        if (day.isPresent() && day.get().getYear() >= 1900) {
            cell.setCellValue(day.get());
        } else {
            day.ifPresent(early -> cell.setCellValue(early.toString()));
        }
        return this;
    }

    /** A live formula, with the value it has now for viewers that don't compute. */
    public Page formula(int column, String formula, BigDecimal value, Look look) {
        XSSFCell cell = row.createCell(column);
        cell.setCellFormula(formula);
        cell.setCellValue(value.doubleValue());
        cell.setCellStyle(looks.get(look));
        return this;
    }

    public Page formula(int column, String formula, Money value, Look look) {
        return formula(column, formula, value.amount(), look);
    }

    public Page formula(int column, String formula, String value, Look look) {
        XSSFCell cell = row.createCell(column);
        cell.setCellFormula(formula);
        cell.setCellValue(value);
        cell.setCellStyle(looks.get(look));
        return this;
    }

    /** "B7" for a column of this row. */
    public String here(int column) {
        return at(row.getRowNum(), column);
    }

    /** "B7"; row and column are counted from 0. */
    public static String at(int row, int column) {
        return new CellReference(row, column, false, false).formatAsString();
    }

    /** "$B$2:$B$9" for a column of two rows and all between. */
    public static String range(int firstRow, int lastRow, int column) {
        String letters = CellReference.convertNumToColString(column);
        return "$" + letters + "$" + (firstRow + 1) + ":$" + letters + "$" + (lastRow + 1);
    }

    /** A cell of this sheet as another sheet names it: "'Order A'!B7". */
    public String outside(String cell) {
        return "'" + sheet.getSheetName().replace("'", "''") + "'!" + cell;
    }

    /** Number of this row, from 0. */
    public int rowNumber() {
        return row.getRowNum();
    }

    /** Lets a reader filter by the columns of the header. */
    public Page filter(int columns) {
        if (headerRow >= 0 && row.getRowNum() > headerRow) {
            sheet.setAutoFilter(new CellRangeAddress(headerRow, row.getRowNum(), 0, columns - 1));
        }
        return this;
    }

    XSSFSheet sheet() {
        return sheet;
    }

    void finish() {
        fitHeight();
        headings.forEach(this::alignHeadings);
        if (headerRow >= 0) {
            sheet.createFreezePane(kept, headerRow + 1);
            sheet.setRepeatingRows(new CellRangeAddress(headerRow, headerRow, -1, -1));
            if (kept > 0) {
                sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, kept - 1));
            }
        }
    }

    /** A heading stands above its numbers, not beside them. */
    private void alignHeadings(int heading) {
        XSSFRow first = sheet.getRow(heading + 1);
        if (first == null) {
            return;
        }
        for (Cell cell : sheet.getRow(heading)) {
            Cell below = first.getCell(cell.getColumnIndex());
            if (below != null && below.getCellStyle().getAlignment() == HorizontalAlignment.RIGHT) {
                cell.setCellStyle(looks.get(Look.HEADER_NUMBER));
            } else if (below != null && below.getCellStyle().getAlignment() == HorizontalAlignment.CENTER) {
                cell.setCellStyle(looks.get(Look.HEADER_CELL));
            }
        }
    }

    private void fitHeight() {
        boolean isHeading = row != null && headings.contains(row.getRowNum());
        if (row != null && (lines > 1 || isHeading)) {
            row.setHeightInPoints(Math.min(lines * LINE_HEIGHT + ROOM, 400));
        }
    }

    private static int linesOf(String text, int width) {
        int lines = 0;
        for (String part : text.split("\n", -1)) {
            lines += 1 + (int) (part.length() / (Math.max(width - 1, 1) * LETTERS));
        }
        return lines;
    }

    private static boolean looksLikeFormula(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0;
    }
}
