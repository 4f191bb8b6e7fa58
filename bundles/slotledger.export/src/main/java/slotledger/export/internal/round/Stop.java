package slotledger.export.internal.round;

import java.util.List;
import slotledger.model.machine.Whereabouts;
import slotledger.model.plan.MachinePlan;

/**
 * One visit to a room.
 *
 * @param where    site and room
 * @param again    whether the room was visited before on this round
 * @param machines what is done there, in order
 */
public record Stop(Whereabouts where, boolean again, List<MachinePlan> machines) {

    public Stop {
        machines = List.copyOf(machines);
    }
}
