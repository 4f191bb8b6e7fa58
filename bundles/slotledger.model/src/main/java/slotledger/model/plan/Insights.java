package slotledger.model.plan;

import java.util.Objects;
import java.util.Optional;

/**
 * What a plan is worth and what binds it.
 *
 * @param alone what buying for each machine by itself would have cost; empty where nobody asked
 */
public record Insights(Optional<BoughtAlone> alone) {

    /** Nobody asked. */
    public static final Insights NONE = new Insights(Optional.empty());

    public Insights {
        Objects.requireNonNull(alone, "alone");
    }
}
