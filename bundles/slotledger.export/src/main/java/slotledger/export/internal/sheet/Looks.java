package slotledger.export.internal.sheet;

import java.util.Currency;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The styles of one workbook, each made once. */
final class Looks {

    private static final byte[] HEADER_GROUND = {(byte) 0xE3, (byte) 0xE6, (byte) 0xEA};
    private static final byte[] BLACK = {0, 0, 0};
    private static final byte[] RULE = {(byte) 0xD0, (byte) 0xD0, (byte) 0xD0};
    private static final byte[] INPUT_GROUND = {(byte) 0xFF, (byte) 0xF8, (byte) 0xDC};

    private static final byte[] PASSES_GROUND = {(byte) 0xDD, (byte) 0xF0, (byte) 0xDE};
    private static final byte[] CAUTION_GROUND = {(byte) 0xEE, (byte) 0xF4, (byte) 0xD2};
    private static final byte[] LOWERS_GROUND = {(byte) 0xFF, (byte) 0xF3, (byte) 0xC9};
    private static final byte[] UNKNOWN_GROUND = {(byte) 0xFF, (byte) 0xFF, (byte) 0xFF};
    private static final byte[] BLOCKS_GROUND = {(byte) 0xF3, (byte) 0xF3, (byte) 0xF3};

    private final XSSFWorkbook workbook;
    private final String moneyFormat;
    private final Map<Look, XSSFCellStyle> plain = new HashMap<>();
    private final Map<Look, XSSFCellStyle> quoted = new HashMap<>();

    Looks(XSSFWorkbook workbook, Currency currency) {
        this.workbook = workbook;
        int digits = currency.getDefaultFractionDigits();
        String number = digits > 0 ? "#,##0." + "0".repeat(digits) : "#,##0";
        String code = "\"" + currency.getCurrencyCode() + "\" ";
        this.moneyFormat = code + number + ";-" + code + number;
    }

    XSSFCellStyle get(Look look) {
        return plain.computeIfAbsent(look, this::make);
    }

    /** The same for a text that would look like a formula if someone typed it again. */
    XSSFCellStyle quoted(Look look) {
        return quoted.computeIfAbsent(look, wanted -> {
            XSSFCellStyle style = make(wanted);
            style.setQuotePrefixed(true);
            return style;
        });
    }

    private XSSFCellStyle make(Look look) {
        XSSFCellStyle style = workbook.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setFont(font(look));
        switch (look) {
            case TITLE, SECTION, NOTE -> style.setWrapText(false);
            case HEADER, HEADER_NUMBER, HEADER_CELL -> {
                style.setAlignment(look == Look.HEADER ? HorizontalAlignment.LEFT
                        : look == Look.HEADER_CELL ? HorizontalAlignment.CENTER : HorizontalAlignment.RIGHT);
                style.setIndention((short) (look == Look.HEADER_CELL ? 0 : 1));
                style.setWrapText(true);
                ground(style, HEADER_GROUND);
                style.setBorderBottom(BorderStyle.MEDIUM);
            }
            case TEXT, STRONG -> {
                style.setWrapText(true);
                rule(style);
                style.setAlignment(HorizontalAlignment.LEFT);
                style.setIndention((short) 1);
            }
            case COUNT, COUNT_STRONG, COUNT_INPUT -> number(style, "#,##0", look == Look.COUNT_STRONG);
            case MONEY, MONEY_STRONG, MONEY_INPUT -> number(style, moneyFormat, look == Look.MONEY_STRONG);
            case DATE -> {
                number(style, "yyyy-mm-dd", false);
                style.setAlignment(HorizontalAlignment.LEFT);
                style.setIndention((short) 1);
            }
            case CELL_PASSES -> cell(style, PASSES_GROUND, BorderStyle.MEDIUM);
            case CELL_CAUTION -> cell(style, CAUTION_GROUND, BorderStyle.MEDIUM);
            case CELL_LOWERS -> cell(style, LOWERS_GROUND, BorderStyle.THIN);
            case CELL_UNKNOWN -> cell(style, UNKNOWN_GROUND, BorderStyle.DASHED);
            case CELL_BLOCKS -> cell(style, BLOCKS_GROUND, BorderStyle.DOTTED);
            case CELL_CLOSED -> cell(style, HEADER_GROUND, BorderStyle.DOTTED);
        }
        if (look == Look.COUNT_INPUT || look == Look.MONEY_INPUT) {
            ground(style, INPUT_GROUND);
            style.setBorderBottom(BorderStyle.MEDIUM);
            style.setBottomBorderColor(new XSSFColor(BLACK, null));
            style.setBorderTop(BorderStyle.MEDIUM);
            style.setBorderLeft(BorderStyle.MEDIUM);
            style.setBorderRight(BorderStyle.MEDIUM);
        }
        return style;
    }

    private static void cell(XSSFCellStyle style, byte[] ground, BorderStyle border) {
        style.setWrapText(true);
        style.setAlignment(HorizontalAlignment.CENTER);
        ground(style, ground);
        style.setBorderBottom(border);
        style.setBorderTop(border);
        style.setBorderLeft(border);
        style.setBorderRight(border);
    }

    private void number(XSSFCellStyle style, String format, boolean total) {
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        style.setAlignment(HorizontalAlignment.RIGHT);
        style.setIndention((short) 1);
        if (total) {
            style.setBorderBottom(BorderStyle.THIN);
            style.setBorderTop(BorderStyle.THIN);
        } else {
            rule(style);
        }
    }

    private static void rule(XSSFCellStyle style) {
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(new XSSFColor(RULE, null));
    }

    private static void ground(XSSFCellStyle style, byte[] rgb) {
        style.setFillForegroundColor(new XSSFColor(rgb, null));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private static short height(Look look) {
        return (short) (look == Look.TITLE ? 16 : look == Look.SECTION ? 12 : isCell(look) ? 9 : 10);
    }

    private static boolean isCell(Look look) {
        return look.compareTo(Look.CELL_PASSES) >= 0;
    }

    private XSSFFont font(Look look) {
        XSSFFont font = workbook.createFont();
        font.setFontName("Liberation Sans");
        font.setFontHeightInPoints(height(look));
        font.setBold(switch (look) {
            case TITLE, SECTION, HEADER, HEADER_NUMBER, HEADER_CELL, STRONG, COUNT_STRONG, MONEY_STRONG -> true;
            case NOTE, TEXT, COUNT, COUNT_INPUT, MONEY, MONEY_INPUT, DATE, CELL_PASSES, CELL_CAUTION, CELL_LOWERS,
                    CELL_UNKNOWN, CELL_BLOCKS, CELL_CLOSED -> false;
        });
        font.setItalic(look == Look.NOTE);
        return font;
    }
}
