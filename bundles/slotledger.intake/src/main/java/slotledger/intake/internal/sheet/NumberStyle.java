package slotledger.intake.internal.sheet;

import java.util.Objects;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;

/**
 * What a number format adds to a number's meaning: that it is a date or a percentage, a unit or currency beside it
 * ({@code 0 "GB"}), leading zeros ({@code 00000}). Rounding and grouping add nothing and are left out.
 *
 * @param date    whether the number is a day
 * @param percent whether it is shown times a hundred
 * @param prefix  text before it
 * @param suffix  text after it
 * @param digits  least digits before the decimal point
 */
record NumberStyle(boolean date, boolean percent, String prefix, String suffix, int digits) {

    static final NumberStyle PLAIN = new NumberStyle(false, false, "", "", 1);

    /** Days from 1899-12-30 to 1904-01-01, the day zero of workbooks from old Macs. */
    static final int DAYS_1904 = 1462;

    /** Spreadsheet programs take no longer ones; patterns on hostile ones could take for ever. */
    private static final int LONGEST_FORMAT = 255;
    private static final double HUNDRED = 100;
    private static final int SIGNIFICANT = 15;

    NumberStyle {
        Objects.requireNonNull(prefix, "prefix");
        Objects.requireNonNull(suffix, "suffix");
    }

    /**
     * The style of a number format.
     *
     * @param id     its number in the workbook; below 164 the built-in ones
     * @param format its text; null or empty for the built-in one
     */
    static NumberStyle of(int id, String format) {
        String text = format;
        if (text == null || text.isEmpty()) {
            boolean builtin = id >= 0 && id < BuiltinFormats.getAll().length;
            text = builtin ? BuiltinFormats.getBuiltinFormat(id) : "General";
        }
        if (text.length() > LONGEST_FORMAT) {
            return PLAIN;
        }
        if (DateUtil.isADateFormat(id, text)) {
            return new NumberStyle(true, false, "", "", 1);
        }
        return NumberFormatText.style(text);
    }

    /**
     * A number in this style.
     *
     * @param column   1-based
     * @param value    the number
     * @param text     the number as text, without style
     * @param date1904 whether days count from 1904-01-01
     */
    Cell cell(int column, double value, String text, boolean date1904) {
        if (this == PLAIN) {
            return new Cell(column, Cell.Type.NUMBER, text, value);
        }
        if (date) {
            String shown = NumberText.date(value, date1904);
            return shown == null
                    ? new Cell(column, Cell.Type.NUMBER, text, value)
                    : new Cell(column, Cell.Type.DATE, shown, date1904 ? value + DAYS_1904 : value);
        }
        return new Cell(column, Cell.Type.NUMBER, styled(value, text), value);
    }

    private String styled(double value, String text) {
        String number = percent ? NumberText.of(value * HUNDRED) + "%" : padded(text);
        boolean negative = number.startsWith("-");
        return (negative ? "-" : "") + prefix + (negative ? number.substring(1) : number) + suffix;
    }

    private String padded(String text) {
        int point = text.indexOf('.');
        int whole = point < 0 ? text.length() : point;
        boolean plain = text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.');
        return plain && whole < digits && digits <= SIGNIFICANT ? "0".repeat(digits - whole) + text : text;
    }
}
