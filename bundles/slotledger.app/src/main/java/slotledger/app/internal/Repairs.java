package slotledger.app.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.proof.MachineProof;
import slotledger.model.proof.Proof;

/**
 * The cheapest way to what was planned for a slot: a module of the same machine in the wrong slot, else one that
 * another machine holds and should not, the nearest first, else a spare, else a new one. Each module is used once.
 */
final class Repairs {

    private record Stray(Machine machine, String slot, SlotContent content) {
    }

    private final List<Stray> strays = new ArrayList<>();

    Repairs(Proof proof, Map<AssetTag, Machine> found) {
        for (MachineProof each : proof.machines()) {
            Machine machine = found.get(each.plan().machine().tag());
            if (machine != null) {
                each.differences().stream().map(MachineProof.Difference::where)
                        .filter(slot -> machine.population().in(slot).module().isPresent())
                        .forEach(slot -> strays.add(new Stray(machine, slot, machine.population().in(slot))));
            }
        }
    }

    /** What to do for one slot of a machine. */
    String of(MachineProof proof, String slot) {
        MachinePlan plan = proof.plan();
        SlotContent wanted = plan.after().in(slot);
        if (wanted.isEmpty()) {
            return "Take out what is there; see who lacks it.";
        }
        if (wanted.module().isEmpty()) {
            return "Put a " + wanted + " in.";
        }
        KindMatch match = new KindMatch(plan.runsAfter().rate());
        Optional<Stray> nearest = strays.stream().filter(stray -> match.matches(wanted, stray.content()))
                .filter(stray -> !(stray.machine().tag().equals(plan.machine().tag()) && stray.slot().equals(slot)))
                .min(Comparator.comparingInt(stray -> distance(stray.machine(), plan.machine())));
        if (nearest.isEmpty()) {
            return "Take one from the spares; else order one " + wanted + ".";
        }
        Stray stray = nearest.get();
        strays.remove(stray);
        return stray.machine().tag().equals(plan.machine().tag()) ? "Move it over from slot " + stray.slot() + "."
                : "Fetch it from machine " + stray.machine().tag() + ", slot " + stray.slot()
                        + (distance(stray.machine(), plan.machine()) > 1 ? " (" + stray.machine().where() + ")" : "")
                        + ", where it should not be.";
    }

    /** 0 in the same machine, 1 in the same room, 2 at the same site, 3 elsewhere. */
    private static int distance(Machine one, Machine other) {
        if (one.tag().equals(other.tag())) {
            return 0;
        }
        return one.where().equals(other.where()) ? 1 : one.where().site().equals(other.where().site()) ? 2 : 3;
    }
}
