package slotledger.model.machine;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;

/**
 * All machines of one inventory whose boards are known.
 *
 * @param machines in inventory order; no asset tag twice
 * @param boards   every board a machine has
 */
public record Fleet(List<Machine> machines, Map<BoardId, Board> boards) {

    public Fleet {
        machines = List.copyOf(machines);
        boards = Map.copyOf(boards);
        Set<AssetTag> seen = new HashSet<>();
        for (Machine machine : machines) {
            if (!seen.add(machine.tag())) {
                throw new IllegalArgumentException(
                        "The asset tag %s must not occur twice. Maybe a finding should have caught it."
                                .formatted(machine.tag()));
            }
            if (!boards.containsKey(machine.board())) {
                throw new IllegalArgumentException("The board %s of machine %s must be among the fleet's boards."
                        .formatted(machine.board(), machine.tag()));
            }
        }
    }

    public Board boardOf(Machine machine) {
        return boards.get(machine.board());
    }

    public Optional<Machine> find(AssetTag tag) {
        return machines.stream().filter(machine -> machine.tag().equals(tag)).findFirst();
    }
}
