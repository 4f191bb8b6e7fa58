package slotledger.model.board;

import java.util.List;
import java.util.Objects;

/**
 * Sockets that are read at once, so that all of them are filled or none is.
 *
 * @param name  as the document names it, unique in the board
 * @param slots labels of its sockets, each once
 */
public record Bank(String name, List<String> slots) {

    public Bank {
        Objects.requireNonNull(name, "name");
        slots = List.copyOf(slots);
        if (slots.isEmpty() || slots.stream().distinct().count() != slots.size()) {
            throw new IllegalArgumentException(
                    "The slots %s of bank %s must be some, each once.".formatted(slots, name));
        }
    }
}
