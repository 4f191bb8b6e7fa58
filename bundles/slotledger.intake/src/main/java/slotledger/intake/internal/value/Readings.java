package slotledger.intake.internal.value;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads texts, equal ones once: a fleet has many machines and few different modules. */
public final class Readings {

    private static final int MOST = 5_000;

    private final Map<List<Object>, ModuleReading> modules = new HashMap<>();
    private final Map<List<Object>, List<SlotReading>> all = new HashMap<>();
    private final Map<List<Object>, SlotReading> slots = new HashMap<>();

    public ModuleReading module(String text, Optional<CapacityUnit> unit) {
        return bounded(modules).computeIfAbsent(List.of(text, unit), key -> ModuleText.read(text, unit));
    }

    public List<SlotReading> all(String text, Optional<CapacityUnit> unit) {
        return bounded(all).computeIfAbsent(List.of(text, unit), key -> SlotText.all(text, unit));
    }

    public SlotReading one(String text, Optional<CapacityUnit> unit) {
        return bounded(slots).computeIfAbsent(List.of(text, unit), key -> SlotText.one(text, unit));
    }

    private static <V> Map<List<Object>, V> bounded(Map<List<Object>, V> cache) {
        if (cache.size() >= MOST) {
            cache.clear();
        }
        return cache;
    }
}
