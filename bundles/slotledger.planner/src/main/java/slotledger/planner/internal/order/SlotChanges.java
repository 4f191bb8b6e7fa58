package slotledger.planner.internal.order;

import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;

/**
 * How one population becomes another with the fewest moves. What may stay in its slot stays.
 *
 * @param within from slot to slot of the same machine
 * @param out    what leaves the machine, by the slot it leaves
 * @param in     what comes from outside, by the slot it enters
 */
public record SlotChanges(
        Map<String, String> within, Map<String, SlotContent> out, Map<String, SlotContent> in) {

    public SlotChanges {
        within = Collections.unmodifiableMap(new LinkedHashMap<>(within));
        out = Collections.unmodifiableMap(new LinkedHashMap<>(out));
        in = Collections.unmodifiableMap(new LinkedHashMap<>(in));
    }

    /** The fewest moves from one population to another. */
    public static SlotChanges of(Population before, Population after) {
        Map<String, SlotContent> out = new LinkedHashMap<>();
        Map<String, SlotContent> in = new LinkedHashMap<>();
        for (String slot : before.contents().keySet()) {
            SlotContent old = before.in(slot);
            SlotContent fresh = after.in(slot);
            if (!old.equals(fresh)) {
                if (!old.isEmpty()) {
                    out.put(slot, old);
                }
                if (!fresh.isEmpty()) {
                    in.put(slot, fresh);
                }
            }
        }
        Map<String, String> within = new LinkedHashMap<>();
        Iterator<Map.Entry<String, SlotContent>> entering = in.entrySet().iterator();
        while (entering.hasNext()) {
            Map.Entry<String, SlotContent> enters = entering.next();
            String from = out.entrySet().stream()
                    .filter(leaves -> leaves.getValue().equals(enters.getValue()))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse(null);
            if (from != null) {
                within.put(from, enters.getKey());
                out.remove(from);
                entering.remove();
            }
        }
        return new SlotChanges(within, out, in);
    }

    public int touches() {
        return within.size() + out.size() + in.size();
    }
}
