package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.export.internal.text.Texts;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;

/** Which machines exchange modules with a machine, and which of them come before it and which after. */
public final class Partners {

    private final Map<AssetTag, MachinePlan> work = new HashMap<>();

    public Partners(Plan plan) {
        plan.work().forEach(machine -> work.put(machine.machine().tag(), machine));
    }

    /** Machines it gets modules from that are opened before it, first ones first. */
    public List<String> before(MachinePlan plan) {
        return names(plan, true, other -> other.workOrder() < plan.workOrder());
    }

    /** Machines it gets modules from that are opened only after it: it stays open until the last of them is done. */
    public List<String> late(MachinePlan plan) {
        return names(plan, true, other -> other.workOrder() > plan.workOrder());
    }

    /** Machines it gives modules to. */
    public List<String> receivers(MachinePlan plan) {
        return names(plan, false, other -> true);
    }

    /** Whether a module comes out of a machine that is opened after this one. */
    public boolean isLate(Move move, MachinePlan plan) {
        MachinePlan other = move.from() instanceof Station.InSlot slot ? work.get(slot.machine()) : null;
        return other != null && other.workOrder() > plan.workOrder();
    }

    /** "from A, B (Annexe); to C; stays open until D is done": may be empty. */
    public String of(MachinePlan plan) {
        List<String> parts = new ArrayList<>();
        List<String> late = late(plan);
        if (!before(plan).isEmpty()) {
            parts.add("from " + String.join(", ", before(plan)));
        }
        if (!receivers(plan).isEmpty()) {
            parts.add("to " + String.join(", ", receivers(plan)));
        }
        if (!late.isEmpty()) {
            parts.add("waits for " + String.join(", ", late) + ": stays open, or gets a borrowed set until then");
        }
        return String.join("; ", parts);
    }

    private interface Choice {
        boolean takes(MachinePlan other);
    }

    private List<String> names(MachinePlan plan, boolean from, Choice choice) {
        Map<AssetTag, MachinePlan> found = new LinkedHashMap<>();
        for (Move move : plan.moves()) {
            if ((from ? move.from() : move.to()) instanceof Station.InSlot slot
                    && !slot.machine().equals(plan.machine().tag())) {
                MachinePlan other = work.get(slot.machine());
                if (other != null && choice.takes(other)) {
                    found.put(slot.machine(), other);
                }
            }
        }
        return found.values().stream()
                .sorted(Comparator.comparingInt(MachinePlan::workOrder))
                .map(other -> name(other, plan))
                .toList();
    }

    private static String name(MachinePlan other, MachinePlan plan) {
        String site = other.machine().where().site();
        return other.machine().tag().value()
                + (site.equals(plan.machine().where().site()) ? "" : " (site " + Texts.or(site, "not known") + ")");
    }
}
