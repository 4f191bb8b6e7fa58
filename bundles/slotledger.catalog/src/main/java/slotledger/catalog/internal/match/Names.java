package slotledger.catalog.internal.match;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Brings names into a form in which only differences that mean something are left. */
public final class Names {

    private static final Set<String> LEGAL_FORMS = Set.of(
            "inc", "ltd", "llc", "plc", "gmbh", "ag", "kg", "co", "corp", "corporation", "company", "limited",
            "incorporated", "sa", "srl", "spa", "bv", "nv", "ab", "oy", "as", "aps", "sro", "kk", "international");

    /** What firmware and inventories say where nobody entered a maker (seen in public firmware tables). */
    private static final Set<String> PLACEHOLDERS = Set.of(
            "", "tobefilledbyoem", "oem", "systemmanufacturer", "systemproductname", "defaultstring", "notspecified",
            "notapplicable", "unknown", "na", "none", "generic", "notavailable", "default", "null", "undefined");

    private Names() {
    }

    /** Lower-case letters and digits; "+" stays as a word, since "X5+" is another model than "X5". */
    public static String normalised(String name) {
        return String.join("", tokens(name));
    }

    /** A maker's name without its legal form. */
    public static String normalisedMaker(String name) {
        List<String> tokens = tokens(name);
        int end = tokens.size();
        while (end > 1 && LEGAL_FORMS.contains(tokens.get(end - 1))) {
            end--;
        }
        return String.join("", tokens.subList(0, end));
    }

    /** Whether a name says nothing. */
    public static boolean isPlaceholder(String name) {
        return PLACEHOLDERS.contains(normalised(name));
    }

    /**
     * A normalised name in which characters that are mistaken for each other are one: O and 0, l, I and 1, S and 5,
     * B and 8, Z and 2. Serves suggestions only.
     */
    static String lookalike(String name) {
        return normalised(name)
                .replace('o', '0')
                .replace('l', '1')
                .replace('i', '1')
                .replace('s', '5')
                .replace('b', '8')
                .replace('z', '2');
    }

    /** Runs of letters and digits, in lower case and without accents. */
    public static List<String> tokens(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}|\\p{Cf}", "")
                .toLowerCase(Locale.ROOT)
                .replace("+", " plus ");
        return Arrays.stream(plain.split("[^\\p{L}\\p{N}]+")).filter(token -> !token.isEmpty()).toList();
    }
}
