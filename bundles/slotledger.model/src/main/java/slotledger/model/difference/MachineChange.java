package slotledger.model.difference;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;

/**
 * A machine that the plans treat differently.
 *
 * @param before what the earlier plan does; empty where the machine isn't in it
 * @param after  what the later plan does; empty where the machine isn't in it
 * @param why    why they differ, one or two sentences
 */
public record MachineChange(Optional<MachinePlan> before, Optional<MachinePlan> after, String why) {

    public MachineChange {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        if (before.isEmpty() && after.isEmpty() || why.isBlank()) {
            throw new IllegalArgumentException("A changed machine must be in one of the plans, and say why it is.");
        }
    }

    public Machine machine() {
        return after.or(() -> before).orElseThrow().machine();
    }

    /** Whether the machine has a target and reaches it. */
    public static boolean isOnTarget(MachinePlan plan) {
        return plan.target().isPresent() && plan.obstacle().isEmpty();
    }
}
