package slotledger.model.plan;

import java.util.Objects;

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
}
