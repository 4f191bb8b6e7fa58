package slotledger.demo;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** How the work on a machine can end otherwise than planned. */
enum Slip {
    /** A module is in the free slot of the same channel. */
    OTHER_SLOT,
    /** The bag held a module twice as large. */
    LARGER_MODULE,
    /** A module stayed in the bag. */
    MISSING_MODULE,
    /** The machine was away, so the inventory does not list it. */
    NOT_LISTED;

    private static final String MODULE = "8GB DDR4-2666";
    private static final String LARGER = "16GB DDR4-2666";

    /** What is found in the slots after the slip; empty where it can't happen to this machine. */
    Optional<Map<String, String>> happenTo(Map<String, String> asPlanned) {
        return switch (this) {
            case NOT_LISTED -> Optional.of(asPlanned);
            case OTHER_SLOT -> moved(asPlanned);
            case LARGER_MODULE -> first(asPlanned, MODULE).map(slot -> changed(asPlanned, slot, LARGER));
            case MISSING_MODULE -> first(asPlanned, SlotWords.EMPTY)
                    .flatMap(free -> first(asPlanned, MODULE))
                    .map(slot -> changed(asPlanned, slot, SlotWords.EMPTY));
        };
    }

    /** Labels such as A1 and A2 name two slots of one channel on the demo's boards. */
    private static Optional<Map<String, String>> moved(Map<String, String> asPlanned) {
        for (String full : asPlanned.keySet()) {
            for (String free : asPlanned.keySet()) {
                boolean beside = full.length() == 2 && free.length() == 2 && full.charAt(0) == free.charAt(0);
                if (beside && asPlanned.get(full).equals(MODULE) && asPlanned.get(free).equals(SlotWords.EMPTY)) {
                    return Optional.of(changed(changed(asPlanned, free, MODULE), full, SlotWords.EMPTY));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<String> first(Map<String, String> contents, String content) {
        return contents.keySet().stream().filter(slot -> contents.get(slot).equals(content)).findFirst();
    }

    private static Map<String, String> changed(Map<String, String> contents, String slot, String content) {
        Map<String, String> changed = new LinkedHashMap<>(contents);
        changed.put(slot, content);
        return changed;
    }
}
