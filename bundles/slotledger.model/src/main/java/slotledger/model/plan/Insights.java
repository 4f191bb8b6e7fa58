package slotledger.model.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a plan is worth and what binds it.
 *
 * @param alone   what buying for each machine by itself would have cost; empty where nobody asked
 * @param without what doing without each purchase line would cost, in the order of the lines; empty where nobody asked
 * @param less    what smaller budgets would lose, the largest of them first; empty where nobody asked
 * @param more    what larger budgets would buy, the smallest of them first; empty where nobody asked or nothing is to
 *                be had for money
 * @param choices what each decision of people costs; empty where nobody asked or decided anything
 */
public record Insights(
        Optional<BoughtAlone> alone,
        List<WithoutOffer> without,
        List<BudgetStep> less,
        List<BudgetStep> more,
        List<WithoutChoice> choices) {

    /** Nobody asked. */
    public static final Insights NONE = new Insights(Optional.empty());

    public Insights {
        Objects.requireNonNull(alone, "alone");
        without = List.copyOf(without);
        less = List.copyOf(less);
        more = List.copyOf(more);
        choices = List.copyOf(choices);
    }

    /** Only what buying for each machine by itself would have cost. */
    public Insights(Optional<BoughtAlone> alone) {
        this(alone, List.of(), List.of(), List.of(), List.of());
    }

    /** The same with what buying for each machine by itself would have cost. */
    public Insights with(BoughtAlone bought) {
        return new Insights(Optional.of(bought), without, less, more, choices);
    }
}
