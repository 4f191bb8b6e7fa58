package slotledger.planner.internal.choice;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.Machine;

/**
 * What can be done with the machines of a class.
 *
 * @param group      the class
 * @param board      the rules asked about its board
 * @param candidates the first leaves the machine as it is
 * @param fitting    numbers of the kinds that may come in; none where the machines may not be opened
 */
public record Options(MachineClass group, JudgedBoard board, List<Candidate> candidates, List<Integer> fitting) {

    public Options {
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(board, "board");
        candidates = List.copyOf(candidates);
        fitting = List.copyOf(fitting);
    }

    public Candidate unchanged() {
        return candidates.get(0);
    }

    public boolean isOnTargetNow() {
        return unchanged().onTarget();
    }

    /** Whether the machines are below a target and could be brought there. */
    public boolean canBeHelped() {
        return group.target().isPresent() && !isOnTargetNow() && candidates.size() > 1;
    }

    /** The same for some machines of the class, or with some of its candidates. */
    public Options of(List<Machine> machines, List<Candidate> some) {
        MachineClass part = new MachineClass(
                group.setup(), group.target(), group.leaveAlone(), group.costCentre(), machines);
        return new Options(part, board, some, fitting);
    }
}
