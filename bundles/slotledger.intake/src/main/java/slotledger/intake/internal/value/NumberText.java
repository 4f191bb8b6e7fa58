package slotledger.intake.internal.value;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A number as people write it.
 *
 * @param value     empty where the text is no number, or can be read in two ways
 * @param ambiguous whether it can be read in two ways: 1.234 is one or one thousand
 * @param evidence  what the text itself shows of how its writer marks fractions
 */
public record NumberText(Optional<BigDecimal> value, boolean ambiguous, DecimalMark evidence) {

    private static final NumberText NONE = new NumberText(Optional.empty(), false, DecimalMark.UNKNOWN);

    /** 1234.50 | 1,234.50 | 1.234,50 | 1 234,50 | 1'234.50 | -12. */
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)*");
    private static final Pattern GROUPING_BLANKS = Pattern.compile("(?<=\\d)['\u2019\\s\\p{Z}](?=\\d{3}(?!\\d))");

    /**
     * Reads a text that should be one number and nothing else.
     *
     * @param mark what the rest of the sheet shows; decides about numbers such as 1.234
     */
    public static NumberText read(String text, DecimalMark mark) {
        String plain = GROUPING_BLANKS.matcher(text.strip()).replaceAll("");
        if (!NUMBER.matcher(plain).matches()) {
            return NONE;
        }
        int points = count(plain, '.');
        int commas = count(plain, ',');
        if (points > 0 && commas > 0) {
            boolean comma = plain.lastIndexOf(',') > plain.lastIndexOf('.');
            return (comma ? commas : points) > 1 ? NONE : decided(plain, comma ? DecimalMark.COMMA : DecimalMark.POINT);
        }
        if (points + commas == 0) {
            return new NumberText(Optional.of(new BigDecimal(plain)), false, DecimalMark.UNKNOWN);
        }
        char only = points > 0 ? '.' : ',';
        DecimalMark asFraction = only == '.' ? DecimalMark.POINT : DecimalMark.COMMA;
        DecimalMark asGroups = only == '.' ? DecimalMark.COMMA : DecimalMark.POINT;
        boolean groups = groupsOfThree(plain, only);
        if (points + commas > 1) {
            return groups ? decided(plain, asGroups) : NONE;
        }
        if (!groups) {
            return decided(plain, asFraction);
        }
        if (mark == DecimalMark.UNKNOWN) {
            return new NumberText(Optional.empty(), true, DecimalMark.UNKNOWN);
        }
        return new NumberText(decided(plain, mark).value, false, DecimalMark.UNKNOWN);
    }

    private static NumberText decided(String plain, DecimalMark mark) {
        String number = mark == DecimalMark.COMMA ? plain.replace(".", "").replace(',', '.') : plain.replace(",", "");
        return new NumberText(Optional.of(new BigDecimal(number)), false, mark);
    }

    private static boolean groupsOfThree(String plain, char separator) {
        String[] groups = plain.split(Pattern.quote(String.valueOf(separator)));
        String first = groups[0].replaceAll("[+-]", "");
        if (first.length() > 3 || first.startsWith("0")) {
            return false;
        }
        for (int i = 1; i < groups.length; i++) {
            if (groups[i].length() != 3) {
                return false;
            }
        }
        return true;
    }

    private static int count(String text, char wanted) {
        return (int) text.chars().filter(character -> character == wanted).count();
    }
}
