package slotledger.model.project;

import java.util.Objects;

/**
 * A plan that was kept.
 *
 * @param number counted from 1, taken back or not
 * @param entry  the entry that keeps it
 */
public record PlanVersion(int number, long entry, Change.Planned plan) {

    public PlanVersion {
        Objects.requireNonNull(plan, "plan");
    }
}
