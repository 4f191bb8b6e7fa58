package slotledger.model.trade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;

/**
 * Modules already owned and not in a machine.
 *
 * @param modules how many of each kind, at least 1, in file order
 * @param fillers how many of each filler
 */
public record Shelf(Map<ModuleKind, Integer> modules, Map<Filler, Integer> fillers) {

    /** Nothing is on the shelf. */
    public static final Shelf EMPTY = new Shelf(Map.of(), Map.of());

    public Shelf {
        modules = Collections.unmodifiableMap(new LinkedHashMap<>(modules));
        fillers = Collections.unmodifiableMap(new LinkedHashMap<>(fillers));
        modules.forEach((kind, count) -> check(kind, count));
        fillers.forEach((filler, count) -> check(filler, count));
    }

    private static void check(Object what, Integer count) {
        if (what == null || count == null || count < 1) {
            throw new IllegalArgumentException(
                    "The count (%s) of %s on the shelf must be at least 1.".formatted(count, what));
        }
    }

    public int count(ModuleKind kind) {
        return modules.getOrDefault(kind, 0);
    }
}
