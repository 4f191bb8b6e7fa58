package slotledger.model.delivery;

import java.util.Objects;
import slotledger.model.plan.Plan;

/**
 * How a plan ends where nothing more of its order will come.
 *
 * @param delivery what arrived, and what could be done by the plan as it was
 * @param before   the plan as it was
 * @param plan     what is done with what is there: machines that are finished hold what they hold, the others get what
 *                 arrived and what is owned. Its purchase lines and their money are those that were ordered, since they
 *                 are spent; what suppliers pay back is not known.
 */
public record Settlement(Delivery delivery, Plan before, Plan plan) {

    public Settlement {
        Objects.requireNonNull(delivery, "delivery");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(plan, "plan");
    }
}
