package slotledger.intake.internal.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.intake.internal.value.SectionFile;
import slotledger.intake.internal.value.Texts;

/** Knows which headings mean which field: from a mapping file first, then from a word list. */
public final class Headings {

    /** (GB) | [MB] | (net, EUR) and whatever else stands in parentheses. */
    private static final Pattern PARENTHESES = Pattern.compile("[(\\[][^)\\]]*[)\\]]");
    /** RAM in GB | Speicher_MB | Preis EUR | Preis €. */
    private static final Pattern UNIT_LAST =
            Pattern.compile("[ _/,-]+(?:in )?(?:[tgmk]i?[bo]|eur|gbp|usd|pln|chf|€|£|\\$|zl|mhz|mt/s)$");
    private static final Pattern NOT_IN_PATTERN = Pattern.compile("[^\\p{L}\\p{Nd}+#-]+");

    /** Asset tags and serials hold long numbers, headings don't. */
    private static final Pattern LONG_NUMBER = Pattern.compile("\\d{4}");
    private static final int LONGEST = 80;
    private static final int MOST_LOOKED = 10_000;

    private final Map<String, Boolean> looked = new HashMap<>();
    private final Map<String, Meaning> mapped;
    private final Map<String, Field> exact = new HashMap<>();
    private final List<Numbered> numbered = new ArrayList<>();
    private final SlotHeadings slots;

    private record Numbered(Pattern pattern, Field field) {}

    private Headings(Map<String, List<String>> words, Map<String, Meaning> mapped) {
        this.mapped = Map.copyOf(mapped);
        words.forEach((section, headings) -> {
            Field field = Field.ofId(section).orElseThrow(() -> new IllegalStateException(
                    "The section [%s] of a list of headings must be the name of a field.".formatted(section)));
            if (!SlotHeadings.knows(field)) {
                headings.forEach(heading -> add(field, heading));
            }
        });
        this.slots = new SlotHeadings(words);
    }

    /**
     * The headings of one kind of table.
     *
     * @param list   name of the word list, such as fleet-headings.txt
     * @param mapped headings a mapping file names, by {@link #mappingKey}
     */
    public static Headings of(String list, Map<String, Meaning> mapped) {
        return new Headings(SectionFile.read(Headings.class, list), mapped);
    }

    private void add(Field field, String heading) {
        if (heading.contains("#")) {
            numbered.add(new Numbered(pattern(heading), field));
        } else {
            exact.putIfAbsent(Texts.key(heading), field);
        }
    }

    /** "price from #" becomes a pattern in which # is a number and blanks, dots and hyphens don't matter. */
    private static Pattern pattern(String heading) {
        StringBuilder pattern = new StringBuilder();
        for (String word : plain(heading).split(" ")) {
            String quoted = word.replace("+", "\\+").replace("#", "(\\d{1,6})");
            pattern.append(pattern.isEmpty() ? "" : "[ -]*").append(quoted);
        }
        return Pattern.compile(pattern.toString());
    }

    static String plain(String text) {
        return NOT_IN_PATTERN.matcher(Texts.fold(text)).replaceAll(" ").strip();
    }

    /** How headings are compared that a mapping file names. */
    public static String mappingKey(String heading) {
        return Texts.tidy(heading).toLowerCase(Locale.ROOT);
    }

    /** The heading without what is in parentheses and without a unit at its end. */
    static String bare(String heading) {
        String outside = Texts.tidy(PARENTHESES.matcher(Texts.tidy(heading)).replaceAll(" "));
        return outside.isEmpty() ? Texts.tidy(heading) : outside;
    }

    private static String withoutUnit(String text) {
        Matcher unit = UNIT_LAST.matcher(Texts.fold(text));
        return unit.find() && unit.end() <= text.length() + 1 ? text.substring(0, Math.min(text.length(), unit.start()))
                : text;
    }

    /** The same as whether the meaning is known, quick for texts that come again and again. */
    boolean mayMean(String text) {
        if (text.length() > LONGEST || LONG_NUMBER.matcher(text).find()) {
            return false;
        }
        if (looked.size() >= MOST_LOOKED) {
            looked.clear();
        }
        return looked.computeIfAbsent(text, key -> meaning(key).isPresent());
    }

    /** What the heading means; empty where nobody knows. */
    public Optional<Meaning> meaning(String heading) {
        Meaning byMapping = mapped.get(mappingKey(heading));
        if (byMapping != null) {
            return Optional.of(byMapping);
        }
        String bare = bare(heading);
        return known(bare).or(() -> known(withoutUnit(bare)));
    }

    private Optional<Meaning> known(String text) {
        Field field = exact.get(Texts.key(text));
        if (field != null) {
            return Optional.of(new Meaning(field, ""));
        }
        String plain = plain(text);
        for (Numbered candidate : numbered) {
            Matcher matcher = candidate.pattern.matcher(plain);
            if (matcher.matches()) {
                return Optional.of(new Meaning(candidate.field, matcher.group(1)));
            }
        }
        return slots.meaning(text);
    }
}
