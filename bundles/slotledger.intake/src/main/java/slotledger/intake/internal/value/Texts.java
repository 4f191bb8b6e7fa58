package slotledger.intake.internal.value;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Makes texts comparable that people wrote in different ways. */
public final class Texts {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");
    private static final Pattern NEITHER_LETTER_NOR_DIGIT = Pattern.compile("[^\\p{L}\\p{Nd}]+");
    /** Control characters and everything that prints nothing, such as the marks that turn the writing direction. */
    private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cc}\\p{Cf}]");

    private Texts() {
    }

    /** One blank for each run of blanks of any kind, none outside. */
    public static String tidy(String text) {
        return BLANKS.matcher(text).replaceAll(" ").strip();
    }

    /** Lower case, without accents; "Größe" and "GROSSE" are the same. */
    public static String fold(String text) {
        String plain = MARKS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKD)).replaceAll("");
        return plain.toLowerCase(Locale.ROOT).replace("ß", "ss").replace("ł", "l").replace("ø", "o").replace("æ", "ae");
    }

    /** Letters and digits only, folded: "Asset-Tag:" becomes "assettag". */
    public static String key(String text) {
        return NEITHER_LETTER_NOR_DIGIT.matcher(fold(text)).replaceAll("");
    }

    /** Upper case with plain blanks, dashes and crosses, for the patterns that read values. */
    public static String upper(String text) {
        return tidy(text).toUpperCase(Locale.ROOT)
                .replace('\u2010', '-').replace('\u2011', '-').replace('\u2012', '-')
                .replace('\u2013', '-').replace('\u2014', '-').replace('\u2212', '-').replace('\u00D7', 'X');
    }

    /** Whether the text holds characters a person does not see; line breaks inside a cell don't count. */
    public static boolean hasInvisible(String text) {
        return INVISIBLE.matcher(text.replace("\n", "").replace("\r", "").replace("\t", "")).find();
    }

    public static String withoutInvisible(String text) {
        return INVISIBLE.matcher(text).replaceAll(match -> match.group().isBlank() ? " " : "");
    }

    /** How many letters must be changed, added or left out to make one text the other. */
    public static int distance(String one, String other) {
        int[] previous = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] current = new int[other.length() + 1];
            current[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                current[j] = Math.min(previous[j - 1] + change, Math.min(previous[j], current[j - 1]) + 1);
            }
            previous = current;
        }
        return previous[other.length()];
    }
}
