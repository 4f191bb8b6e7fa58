package slotledger.planner;

import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.delivery.Settlement;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;

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

    /**
     * Ends a plan of whose order nothing more will come. Machines that can be done as planned are, unless another use
     * of what is there brings more weighted machines on target; nothing is bought.
     *
     * @param receipts all that arrived, all lists together
     * @param done     machines that are finished as planned
     * @param boards   every board of the plan's machines
     * @param market   what is offered today, to say what leftovers are worth
     * @throws PlannerException where the machines that are done took more than was there, or no solver can be used
     */
    Settlement settle(
            Plan plan,
            List<Receipt> receipts,
            Set<AssetTag> done,
            Map<BoardId, Board> boards,
            Market market,
            Progress progress)
            throws PlannerException;
}
