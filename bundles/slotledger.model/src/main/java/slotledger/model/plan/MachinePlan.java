package slotledger.model.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.trade.Target;
import slotledger.model.unit.Money;
import slotledger.model.verdict.Operation;

/**
 * What becomes of one machine.
 *
 * @param machine   the machine as it is now
 * @param target    what its role must reach
 * @param after     what is in its slots after the work
 * @param outcome   what the plan does for it
 * @param moves     every module that leaves, enters or changes its slot; empty where it isn't opened
 * @param runsNow   how it runs now
 * @param runsAfter how it runs after
 * @param obstacle  why it isn't on target after; empty where it is
 * @param labour    price of the work on it
 * @param workOrder place in the order of work, 1 for the first; 0 where it isn't opened
 */
public record MachinePlan(
        Machine machine,
        Optional<Target> target,
        Population after,
        Outcome outcome,
        List<Move> moves,
        Operation runsNow,
        Operation runsAfter,
        Optional<Obstacle> obstacle,
        Money labour,
        int workOrder) {

    public MachinePlan {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(outcome, "outcome");
        moves = List.copyOf(moves);
        Objects.requireNonNull(runsNow, "runsNow");
        Objects.requireNonNull(runsAfter, "runsAfter");
        Objects.requireNonNull(obstacle, "obstacle");
        Objects.requireNonNull(labour, "labour");
        if (workOrder < 0 || (workOrder == 0) != moves.isEmpty()) {
            throw new IllegalArgumentException(
                    "The work order (%d) of machine %s must be set exactly where there are moves."
                            .formatted(workOrder, machine.tag()));
        }
    }

    /** Whether somebody opens the machine. */
    public boolean isOpened() {
        return !moves.isEmpty();
    }

    public Population before() {
        return machine.population();
    }
}
