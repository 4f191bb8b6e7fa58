package slotledger.planner.internal.choice;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.trade.Target;
import slotledger.rules.Setup;

/**
 * Machines that are alike for every decision.
 *
 * @param setup      board, processors, operating system and what is in the slots now
 * @param target     what they must reach, without the name of the role
 * @param leaveAlone whether the policy lets nobody touch them
 * @param costCentre the cost centre whose budget limits them; empty where none does
 * @param machines   in the order of their asset tags
 */
public record MachineClass(
        Setup setup, Optional<Target> target, boolean leaveAlone, String costCentre, List<Machine> machines) {

    public MachineClass {
        Objects.requireNonNull(setup, "setup");
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(costCentre, "costCentre");
        machines = List.copyOf(machines);
        if (machines.isEmpty()) {
            throw new IllegalArgumentException("A class must have machines.");
        }
    }

    public int size() {
        return machines.size();
    }

    public Population now() {
        return setup.population();
    }

    /** How much one machine of the class counts; 0 without a target. */
    public long weight() {
        return target.map(Target::weight).orElse(0);
    }

    /** One machine that stands for many whose populations are decided: without a target, not to be opened. */
    public MachineClass asRest() {
        return new MachineClass(setup, Optional.empty(), true, costCentre, machines.subList(0, 1));
    }
}
