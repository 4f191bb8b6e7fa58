package slotledger.intake.internal.sheet;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import org.apache.poi.ss.util.NumberToTextConverter;

/** Numbers and dates as a person sees them in a cell without a format of its own. */
final class NumberText {

    /** What all spreadsheet programs show of a number, and no more. */
    private static final int DIGITS = 15;
    private static final double LARGEST_WHOLE = 1e15;
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    /** 9999-12-31, the last day that spreadsheet programs know. */
    private static final double LAST_DAY = 2_958_466;
    /** Before this day, the 29 February 1900 that never was, the usual day numbers are one short. */
    static final double LEAP_BUG = 60;
    private static final long SECONDS = 86_400;
    private static final long MINUTE = 60;

    private NumberText() {
    }

    /** Without a needless fraction, rounded to fifteen digits: 8, 0.1, 1E+21. */
    static String of(double value) {
        if (value == Math.rint(value) && Math.abs(value) < LARGEST_WHOLE) {
            return Long.toString((long) value);
        }
        return NumberToTextConverter.toText(value);
    }

    /** The same for a number that was written out, whose text often is what is wanted already. */
    static String of(String written, double value) {
        return isShort(written) ? written : of(value);
    }

    private static boolean isShort(String written) {
        int start = written.startsWith("-") ? 1 : 0;
        int length = written.length() - start;
        int point = written.indexOf('.', start);
        int digits = point < 0 ? length : length - 1;
        if (digits < 1 || digits > DIGITS || point == start || point == written.length() - 1
                || point > 0 && written.endsWith("0")) {
            return false;
        }
        for (int i = start; i < written.length(); i++) {
            char c = written.charAt(i);
            if (i != point && (c < '0' || c > '9')) {
                return false;
            }
        }
        // "007" and "-0" are for the general way.
        return written.charAt(start) != '0' || point == start + 1 || written.equals("0");
    }

    /**
     * A day number as a date, with the time of day where there is one: 2024-03-01, 2024-03-01 14:30, 14:30.
     *
     * @param days     since the day zero of the workbook
     * @param date1904 whether that is 1904-01-01 rather than 1899-12-30
     * @return null where no calendar has that day
     */
    static String date(double days, boolean date1904) {
        double shifted = date1904 ? days + NumberStyle.DAYS_1904 : days;
        if (!(days >= 0) || shifted >= LAST_DAY) {
            return null;
        }
        long seconds = Math.round(shifted * SECONDS);
        LocalDate day = DAY_ZERO.plusDays(seconds / SECONDS + (!date1904 && shifted < LEAP_BUG ? 1 : 0));
        long time = seconds % SECONDS;
        if (time == 0) {
            return day.toString();
        }
        String clock = "%02d:%02d".formatted(time / MINUTE / MINUTE, time / MINUTE % MINUTE);
        String exact = time % MINUTE == 0 ? clock : clock + ":%02d".formatted(time % MINUTE);
        return days < 1 ? exact : day + " " + exact;
    }

    /** The day number of a date written by ISO 8601, NaN where it is none: 2024-03-01T14:30:00. */
    static double days(String written) {
        try {
            String local = written.endsWith("Z") ? written.substring(0, written.length() - 1) : written;
            LocalDateTime moment = local.contains("T")
                    ? LocalDateTime.parse(local) : LocalDate.parse(local).atStartOfDay();
            return ChronoUnit.SECONDS.between(DAY_ZERO.atStartOfDay(), moment) / (double) SECONDS;
        } catch (DateTimeParseException other) {
            return Double.NaN;
        }
    }
}
