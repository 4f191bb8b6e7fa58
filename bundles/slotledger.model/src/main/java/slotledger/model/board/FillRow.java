package slotledger.model.board;

import java.util.List;
import java.util.Optional;
import slotledger.model.unit.Rate;

/**
 * One printed row of a fill table: so many modules go exactly into these slots.
 *
 * @param processors how many processors are installed for this row
 * @param slots      labels of the slots filled
 * @param fastest    rate printed for the row; empty where the table has none
 */
public record FillRow(int processors, List<String> slots, Optional<Rate> fastest) {

    public FillRow {
        slots = List.copyOf(slots);
        if (processors < 1) {
            throw new IllegalArgumentException(
                    "The processors (%d) of a fill row must be at least 1.".formatted(processors));
        }
        if (slots.isEmpty() || slots.stream().distinct().count() != slots.size()) {
            throw new IllegalArgumentException("The slots %s of a fill row must be some, each once.".formatted(slots));
        }
    }
}
