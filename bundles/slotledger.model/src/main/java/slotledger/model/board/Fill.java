package slotledger.model.board;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.module.Filler;

/**
 * Which slots come first. A printed table overrides the order for the counts it names.
 *
 * @param order        labels of the sockets in the order they are filled; empty where no document says
 * @param table        printed rows; several rows of one count are alternatives
 * @param binding      how strictly order and table bind
 * @param tableOnly    only the counts in the table are allowed
 * @param setSize      modules come in sets of this many identical ones (1 = singly, 2 = pairs)
 * @param largestFirst larger modules go into the slots that come first in the order
 * @param ranksFirst   modules with more ranks go into the slots that come first in the order
 * @param blank        what an empty socket must hold; empty means nothing
 */
public record Fill(
        List<String> order, List<FillRow> table, Binding binding, boolean tableOnly, int setSize,
        boolean largestFirst, boolean ranksFirst, Optional<Filler> blank) {

    /** No document says anything about an order. */
    public static final Fill ANY = new Fill(List.of(), List.of(), Binding.RECOMMENDED, false, 1, false,
            false, Optional.empty());

    public Fill {
        order = List.copyOf(order);
        table = List.copyOf(table);
        Objects.requireNonNull(binding, "binding");
        Objects.requireNonNull(blank, "blank");
        if (setSize < 1) {
            throw new IllegalArgumentException("The set size (%d) must be at least 1.".formatted(setSize));
        }
        if (tableOnly && table.isEmpty()) {
            throw new IllegalArgumentException("The fill table must have rows where only the table is allowed.");
        }
    }
}
