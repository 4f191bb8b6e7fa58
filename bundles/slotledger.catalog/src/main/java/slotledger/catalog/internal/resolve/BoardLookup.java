package slotledger.catalog.internal.resolve;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.catalog.BoardMatch;
import slotledger.catalog.Catalog;
import slotledger.model.board.Board;
import slotledger.model.observed.ObservedMachine;

/** Finds a machine's board, or says where on the machine its name can be read. */
final class BoardLookup {

    private static final String EXPECTED = "the maker and model of a board in the catalog";
    private static final String WHERE = "Look for the model on the machine: the label underneath a notebook or under"
            + " its battery, on the side panel or back of a desktop, behind an all-in-one's stand, inside the door or"
            + " on the pull-out tag of a server; or on the first screen of the firmware setup; or ask the running"
            + " system: \"dmidecode -s system-product-name\" on Linux, System Information (\"System Model\") on"
            + " Windows.";

    private BoardLookup() {
    }

    static Optional<Board> find(ObservedMachine machine, Catalog catalog, Remarks remarks) {
        BoardMatch match = catalog.match(machine.maker(), machine.model());
        if (match instanceof BoardMatch.Found found) {
            return Optional.of(found.board());
        }
        unknown(machine, ((BoardMatch.NotFound) match).suggestions(), remarks);
        return Optional.empty();
    }

    private static void unknown(ObservedMachine machine, List<Board> suggestions, Remarks remarks) {
        String seen = (machine.maker() + " " + machine.model()).strip();
        if (machine.model().isBlank()) {
            remarks.error("board-unknown", seen, "The inventory names no model, so the board isn't known.", EXPECTED,
                    WHERE + " Then write it into the inventory.");
        } else if (suggestions.isEmpty()) {
            remarks.error("board-unknown", seen, "No board of the catalog goes by this name.", EXPECTED, WHERE
                    + " If the name is right, find the memory pages of the model's own manual and add a board file.");
        } else {
            String boards = suggestions.stream()
                    .map(board -> board.name() + " (" + board.id() + ")")
                    .collect(Collectors.joining(", "));
            remarks.error("board-unknown", seen,
                    "No single board surely goes by this name. Similar: %s.".formatted(boards), EXPECTED, WHERE
                    + " If it is one of the similar boards, correct the inventory or add the name to the board's"
                    + " aliases.");
        }
    }
}
