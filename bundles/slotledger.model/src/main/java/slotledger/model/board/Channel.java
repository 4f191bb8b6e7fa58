package slotledger.model.board;

import java.util.Objects;

/**
 * One independent path between a memory controller and its slots.
 *
 * @param name      as the document names it, unique in the board
 * @param processor which processor socket it belongs to, 1 for the first
 */
public record Channel(String name, int processor) {

    public Channel {
        Objects.requireNonNull(name, "name");
        if (processor < 1) {
            throw new IllegalArgumentException(
                    "The processor (%d) of channel %s must be at least 1.".formatted(processor, name));
        }
    }
}
