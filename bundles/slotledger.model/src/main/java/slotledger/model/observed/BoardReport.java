package slotledger.model.observed;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.board.BoardForm;
import slotledger.model.unit.Capacity;

/**
 * What one machine's firmware says of its board, with known lies corrected. Empty means it doesn't say, or can't be
 * believed.
 *
 * @param machine      the machine; its slots are those of the board
 * @param otherNames   other names of the same model
 * @param form         kind of computer
 * @param largestTotal most memory in all
 * @param corrects     whether memory errors are corrected
 * @param lies         what was corrected or is wrong, by the code of its finding
 */
public record BoardReport(ObservedMachine machine, List<String> otherNames, Optional<BoardForm> form,
        Optional<Capacity> largestTotal, Optional<Boolean> corrects, List<String> lies) {

    public BoardReport {
        Objects.requireNonNull(machine, "machine");
        otherNames = List.copyOf(otherNames);
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(largestTotal, "largestTotal");
        Objects.requireNonNull(corrects, "corrects");
        lies = List.copyOf(lies);
    }
}
