package slotledger.model.plan;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Operation;

/**
 * A population that a machine could end with, and what the whole plan would come to with it.
 *
 * @param after     what is in its slots then
 * @param runs      how it runs then
 * @param onTarget  whether it meets its target then
 * @param isPlanned whether this is what the plan does
 * @param figures   of the plan with it; empty where stock or money doesn't reach for it
 * @param replanned whether everything else was planned anew for it; else all other machines end as in the plan, and
 *                  only the order is made anew
 */
public record Alternative(
        Population after,
        Operation runs,
        boolean onTarget,
        boolean isPlanned,
        Optional<Figures> figures,
        boolean replanned) {

    public Alternative {
        Objects.requireNonNull(after, "after");
        Objects.requireNonNull(runs, "runs");
        Objects.requireNonNull(figures, "figures");
    }
}
