package slotledger.planner.internal;

import static slotledger.planner.internal.PlanAudit.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/** The part of the audit that carries out the moves in one machine: all that leaves first, then all that enters. */
final class MovesAudit {

    private final MachinePlan plan;
    private final List<String> left = new ArrayList<>();
    private final List<String> filled = new ArrayList<>();
    private final List<SlotContent> entered = new ArrayList<>();

    private MovesAudit(MachinePlan plan) {
        this.plan = plan;
    }

    /** Whether the machine holds then what the plan says; fails where a move can't be carried out. */
    static boolean leadsToAfter(MachinePlan plan) {
        MovesAudit audit = new MovesAudit(plan);
        plan.moves().forEach(audit::leave);
        plan.moves().forEach(audit::enter);
        return audit.isAfter();
    }

    private boolean isHere(AssetTag machine) {
        return machine.equals(plan.machine().tag());
    }

    private void leave(Move move) {
        if (move.from() instanceof Station.InSlot slot && isHere(slot.machine())) {
            require(plan.before().in(slot.slot()).equals(move.content()) && !left.contains(slot.slot()),
                    "The slot %s of machine %s must hold what leaves it.", slot.slot(), slot.machine());
            left.add(slot.slot());
        }
    }

    private void enter(Move move) {
        if (move.to() instanceof Station.InSlot slot && isHere(slot.machine())) {
            require(content(slot.slot()).isEmpty(),
                    "The slot %s of machine %s must be empty before something enters.", slot.slot(), slot.machine());
            filled.add(slot.slot());
            entered.add(move.content());
        }
    }

    private SlotContent content(String slot) {
        int place = filled.indexOf(slot);
        return place >= 0 ? entered.get(place) : left.contains(slot) ? SlotContent.EMPTY : plan.before().in(slot);
    }

    private boolean isAfter() {
        Map<String, SlotContent> before = plan.before().contents();
        Map<String, SlotContent> after = plan.after().contents();
        int more = 0;
        for (String slot : filled) {
            more += before.containsKey(slot) ? 0 : 1;
        }
        if (after.size() != before.size() + more) {
            return false;
        }
        for (Map.Entry<String, SlotContent> each : after.entrySet()) {
            boolean isNamed = before.containsKey(each.getKey()) || filled.contains(each.getKey());
            if (!isNamed || !content(each.getKey()).equals(each.getValue())) {
                return false;
            }
        }
        return true;
    }
}
