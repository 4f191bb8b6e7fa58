package slotledger.intake.internal.value;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Words with one meaning, in several languages, from words.txt. */
public enum Words {
    EMPTY,
    SLOT,
    UNKNOWN,
    NO_VALUE,
    TOTAL,
    YES,
    NO,
    PLENTY,
    NONE_LEFT,
    AT_ONCE;

    private static final Map<Words, Set<String>> KEYS = load();

    private static Map<Words, Set<String>> load() {
        Map<Words, Set<String>> keys = new EnumMap<>(Words.class);
        for (Words words : values()) {
            keys.put(words, new HashSet<>());
        }
        Map<String, List<String>> sections = SectionFile.read(Words.class, "words.txt");
        sections.forEach((section, words) -> {
            Words meaning = Words.valueOf(section.toUpperCase(Locale.ROOT).replace('-', '_'));
            words.forEach(word -> keys.get(meaning).add(key(word)));
        });
        return keys;
    }

    /** Without letters and digits, a text is itself: "?" and "-" mean something too. */
    private static String key(String text) {
        String key = Texts.key(text);
        return key.isEmpty() ? Texts.tidy(text) : key;
    }

    /** Whether the whole text is one of these words. */
    public boolean says(String text) {
        return KEYS.get(this).contains(key(text));
    }

    /** Whether the text begins with one of these words. */
    public boolean begins(String text) {
        String[] words = Texts.tidy(text).split("[ :;,=]", 2);
        return says(text) || words.length > 0 && says(words[0]);
    }

    /** Whether nothing is in a slot: an empty word, a dash, or zero. */
    public static boolean sayEmpty(String text) {
        String tidy = Texts.upper(text);
        return EMPTY.says(text) || !tidy.isEmpty() && tidy.matches("[-_/.X]{1,5}|0+(?:[.,]0+)?\\s?(?:"
                + CapacityUnit.WORDS + ")?");
    }

    /** Whether a text of a field such as the serial number stands for nothing: a dash, "n/a", "unknown". */
    public static boolean sayNothing(String text) {
        String tidy = Texts.upper(text);
        return tidy.isEmpty() || tidy.matches("[-_/.?*]{1,5}|N/?A|N\\.A\\.") || UNKNOWN.says(text)
                || NO_VALUE.says(text)
                || text.strip().equalsIgnoreCase("none");
    }

    /** Reads a yes or no. */
    public static Optional<Boolean> decide(String text) {
        return YES.says(text) ? Optional.of(true) : NO.says(text) ? Optional.of(false) : Optional.empty();
    }
}
