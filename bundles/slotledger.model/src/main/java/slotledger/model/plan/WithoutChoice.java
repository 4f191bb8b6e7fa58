package slotledger.model.plan;

import java.util.Objects;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Taste;

/**
 * The price of something people decided: what the best plan comes to without it, all other decisions kept.
 *
 * @param choice  what was decided, in words
 * @param figures of the best plan without it
 */
public record WithoutChoice(String choice, Figures figures) {

    public WithoutChoice {
        Objects.requireNonNull(figures, "figures");
        if (choice.isBlank()) {
            throw new IllegalArgumentException("A decision must be named.");
        }
    }

    /** The words for a pin, as {@link #choice()} has them. */
    public static String of(Pin pin) {
        return "the pin of " + pin;
    }

    /** The words for something forbidden or preferred. */
    public static String of(Taste taste) {
        String about = switch (taste.about()) {
            case KIND -> "the kind ";
            case SUPPLIER -> "the supplier ";
            case MAKER -> "the maker ";
        };
        return switch (taste.attitude()) {
            case FORBID -> "to do without " + about + taste.name();
            case PREFER -> "to prefer " + about + taste.name();
        };
    }

    /** The words for a room that is kept uniform. */
    public static String ofUniform(String room) {
        return "to keep the room %s uniform".formatted(room);
    }

    /** The words for the most machines to open. */
    public static String ofMostOpened(int most) {
        return "to open at most %d machines".formatted(most);
    }
}
