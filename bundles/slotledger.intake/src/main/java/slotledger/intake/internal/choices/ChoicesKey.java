package slotledger.intake.internal.choices;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import slotledger.intake.internal.value.Nearest;
import slotledger.intake.internal.value.Texts;

/** The keys of a file of choices, as they are written; case, blanks and hyphens don't matter. */
enum ChoicesKey {
    PINS(Level.TOP, "pins", "pin"),
    FORBID(Level.TOP, "forbid", "forbidden", "never"),
    PREFER(Level.TOP, "prefer", "preferred", "rather"),
    UNIFORM(Level.TOP, "uniform rooms", "uniform room", "uniform"),
    MOST_OPENED(Level.TOP, "most machines opened", "most opened", "most machines"),

    MACHINE(Level.PIN, "machine", "asset tag", "tag"),
    SLOTS(Level.PIN, "slots", "slot"),

    KIND(Level.TASTE, "kind", "kinds", "module", "modules"),
    SUPPLIER(Level.TASTE, "supplier", "suppliers"),
    MAKER(Level.TASTE, "maker", "makers", "brand", "brands"),
    WORTH(Level.TASTE, "worth");

    /** Where a key may stand. */
    enum Level { TOP, PIN, TASTE }

    private final Level level;
    private final List<String> names;

    ChoicesKey(Level level, String... names) {
        this.level = level;
        this.names = List.of(names);
    }

    String text() {
        return names.get(0);
    }

    static Optional<ChoicesKey> of(Level level, String text) {
        return Arrays.stream(values())
                .filter(key -> key.level == level)
                .filter(key -> key.names.stream().anyMatch(name -> Texts.key(name).equals(Texts.key(text))))
                .findFirst();
    }

    /** What to do about a key nobody knows. */
    static String advice(Level level, String written) {
        List<String> known = Arrays.stream(values()).filter(key -> key.level == level).map(ChoicesKey::text).toList();
        return Nearest.to(written, known).map("Maybe \"%s\" is meant."::formatted)
                .orElse("Known here: " + String.join(", ", known) + ".");
    }
}
