package slotledger.rules.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slotledger.rules.spi.Placed;

/** Says which slots hold what; for the words of a statement only, never while weighing. */
public final class Slots {

    private Slots() {
    }

    public static List<String> labels(List<Placed> modules) {
        return modules.stream().map(Placed::label).toList();
    }

    /** "x4 in A1, A2; x8 in A5": slots by what they hold, in the board's order; what has no text is left out. */
    public static String by(List<Placed> modules, Function<Placed, String> what) {
        Map<String, List<String>> groups = new LinkedHashMap<>();
        for (Placed module : modules) {
            String text = what.apply(module);
            if (!text.isEmpty()) {
                groups.computeIfAbsent(text, each -> new ArrayList<>()).add(module.label());
            }
        }
        List<String> parts = new ArrayList<>();
        groups.forEach((text, labels) -> parts.add(text + " in " + String.join(", ", labels)));
        return String.join("; ", parts);
    }

    /** "16 GB in A1, A2; 32 GB in A5". */
    public static String byCapacity(List<Placed> modules) {
        return by(modules, module -> module.kind().capacity().toString());
    }
}
