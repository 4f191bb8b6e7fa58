package slotledger.model.trade;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.module.Piece;

/**
 * Modules and fillers already owned and not in a machine.
 *
 * @param pieces how many of each, at least 1, in file order
 */
public record Shelf(Map<Piece, Integer> pieces) {

    /** Nothing is on the shelf. */
    public static final Shelf EMPTY = new Shelf(Map.of());

    public Shelf {
        pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
        pieces.forEach((piece, count) -> {
            if (piece == null || count == null || count < 1) {
                throw new IllegalArgumentException(
                        "The count (%s) of %s on the shelf must be at least 1.".formatted(count, piece));
            }
        });
    }

    public int count(Piece piece) {
        return pieces.getOrDefault(piece, 0);
    }
}
