package slotledger.planner;

import java.util.List;
import java.util.Set;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;

/** Says what can be done with what arrived of an order. Same arguments, same answer. */
public interface DeliveryPlanner {

    /**
     * Picks the machines of a plan that can be done now: the most weighted targets, then the most machines, then the
     * least work. What arrived beyond the plan's needs, such as spares, serves too where something is short.
     *
     * @param receipts what arrived so far, all lists together
     * @param done     machines that are finished as planned; what they took and gave is counted
     * @throws PlannerException where the machines that are done took more than was there, or no solver can be used
     */
    Delivery arrived(Plan plan, List<Receipt> receipts, Set<AssetTag> done, Progress progress)
            throws PlannerException;
}
