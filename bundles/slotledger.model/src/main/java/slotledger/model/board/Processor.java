package slotledger.model.board;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/**
 * A processor a board may carry, with the memory limits that come from it rather than from the board.
 *
 * @param name         as printed
 * @param aliases      other names an inventory may use
 * @param fastest      highest rate its memory controller runs; empty means unknown
 * @param largestTotal most memory it addresses, per processor; empty means unknown
 */
public record Processor(String name, List<String> aliases, Optional<Rate> fastest, Optional<Capacity> largestTotal) {

    public Processor {
        Objects.requireNonNull(name, "name");
        aliases = List.copyOf(aliases);
        Objects.requireNonNull(fastest, "fastest");
        Objects.requireNonNull(largestTotal, "largestTotal");
    }
}
