package slotledger.catalog.internal.resolve;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.source.Place;

/**
 * What empty sockets hold that no firmware can see: it reports a continuity module as "no module installed". Gathers
 * what was assumed of the machines of a fleet, so that it is said once for each board.
 */
public final class Blanks {

    private final Map<Board, Assumed> assumed = new LinkedHashMap<>();

    /**
     * What was assumed for one board.
     *
     * @param place    where its first such machine stands
     * @param machines how many machines
     * @param sockets  how many of their sockets
     */
    private record Assumed(Place place, int machines, int sockets) {
    }

    /** A filler as an inventory names it, in the form that goes into this board. */
    static SlotContent named(Board board, Filler written) {
        Filler blank = board.fill().blank().orElse(written);
        return SlotContent.of(blank == Filler.AIR_BLANK ? written : blank);
    }

    /** The population with every empty socket holding what it must; the same where nothing runs in it. */
    public Population in(Board board, Population population, Place place) {
        if (board.fill().blank().isEmpty() || population.modules().isEmpty()) {
            return population;
        }
        List<String> empty = board.sockets().stream()
                .map(Slot::label)
                .filter(label -> population.in(label).isEmpty())
                .toList();
        if (empty.isEmpty()) {
            return population;
        }
        Population filled = population;
        for (String label : empty) {
            filled = filled.with(label, SlotContent.of(board.fill().blank().get()));
        }
        assumed.merge(board, new Assumed(place, 1, empty.size()), (old, one) ->
                new Assumed(old.place(), old.machines() + 1, old.sockets() + one.sockets()));
        return filled;
    }

    public List<Finding> findings() {
        return assumed.entrySet().stream().map(entry -> finding(entry.getKey(), entry.getValue())).toList();
    }

    private static Finding finding(Board board, Assumed assumed) {
        Filler blank = board.fill().blank().orElseThrow();
        String why = blank == Filler.AIR_BLANK
                ? "the board's document asks for it (%s)".formatted(board.sourceOf(BoardFact.FILL))
                : "the machines wouldn't run without";
        return new Finding(Severity.NOTE, "fillers-assumed", assumed.place(), Optional.empty(), board.name(),
                "Empty sockets of the board %s were taken to hold one %s each, since %s: %d in %d machine(s)."
                        .formatted(board.name(), blank.text(), why, assumed.sockets(), assumed.machines()),
                "every socket of the machine in the inventory, fillers too",
                "Count them in one machine; the inventory may name them in the slots.");
    }
}
