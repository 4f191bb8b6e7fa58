package slotledger.model.board;

import java.util.Objects;

/**
 * One independent path between a memory controller and its slots.
 *
 * @param name      as the document names it, unique in the board
 * @param processor which processor socket it belongs to, 1 for the first
 * @param spans     how many memory channels one module of it carries: 2 for 32-bit RIMMs and CAMM2, else 1
 */
public record Channel(String name, int processor, int spans) {

    public Channel(String name, int processor) {
        this(name, processor, 1);
    }

    public Channel {
        Objects.requireNonNull(name, "name");
        if (processor < 1) {
            throw new IllegalArgumentException(
                    "The processor (%d) of channel %s must be at least 1.".formatted(processor, name));
        }
        if (spans < 1) {
            throw new IllegalArgumentException("The channels (%d) a module of channel %s carries must be at least 1."
                    .formatted(spans, name));
        }
    }
}
