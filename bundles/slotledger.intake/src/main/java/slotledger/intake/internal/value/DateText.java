package slotledger.intake.internal.value;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A date as people write it.
 *
 * @param value     empty where the text is no date, or can be read in two ways
 * @param ambiguous whether it can be read in two ways: 03/04/2025
 */
public record DateText(Optional<LocalDate> value, boolean ambiguous) {

    /** 2025-03-31. */
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ].*)?");
    /** 31.3.2025 | 31.03.25: with points the day always comes first. */
    private static final Pattern POINTS = Pattern.compile("(\\d{1,2})\\.\\s?(\\d{1,2})\\.\\s?(\\d{2}|\\d{4})");
    /** 31/03/2025 | 3/31/2025 | 31-03-2025. */
    private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{2}|\\d{4})");
    private static final int CENTURY = 2000;

    private static final DateText NONE = new DateText(Optional.empty(), false);

    public static DateText read(String text) {
        String plain = text.strip();
        Matcher iso = YEAR_FIRST.matcher(plain);
        if (iso.matches()) {
            return of(number(iso, 1), number(iso, 2), number(iso, 3));
        }
        Matcher points = POINTS.matcher(plain);
        if (points.matches()) {
            return of(year(points), number(points, 2), number(points, 1));
        }
        Matcher slashes = SLASHES.matcher(plain);
        if (!slashes.matches()) {
            return NONE;
        }
        int first = number(slashes, 1);
        int second = number(slashes, 2);
        if (first <= 12 && second <= 12 && first != second) {
            return new DateText(Optional.empty(), true);
        }
        return first > 12 ? of(year(slashes), second, first) : of(year(slashes), first, second);
    }

    private static int year(Matcher matcher) {
        int year = number(matcher, 3);
        return year < 100 ? CENTURY + year : year;
    }

    private static int number(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private static DateText of(int year, int month, int day) {
        try {
            return new DateText(Optional.of(LocalDate.of(year, month, day)), false);
        } catch (DateTimeException e) {
            return NONE;
        }
    }
}
