package slotledger.planner.internal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.delivery.Settlement;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.planner.DeliveryPlanner;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.delivery.Arrival;
import slotledger.rules.MemoryRules;
import slotledger.solver.MilpSolver;

/** Allots what arrived with the best of the solvers that run here. */
@Component
public final class DefaultDeliveryPlanner implements DeliveryPlanner {

    private final MemoryRules rules;
    private final Solvers solvers;

    @Activate
    public DefaultDeliveryPlanner(
            @Reference MemoryRules rules,
            @Reference(service = MilpSolver.class) List<Map.Entry<Map<String, Object>, MilpSolver>> solvers) {
        this.rules = rules;
        this.solvers = Solvers.byRanking(solvers);
    }

    @Override
    public Delivery arrived(Plan plan, List<Receipt> receipts, Set<AssetTag> done, Progress progress)
            throws PlannerException {
        return new Arrival(plan, receipts, done).allot(solvers.pick(Optional.empty()).solver(), progress);
    }

    @Override
    public Settlement settle(Plan plan, List<Receipt> receipts, Set<AssetTag> done, Map<BoardId, Board> boards,
            Market market, Progress progress) throws PlannerException {
        Solvers.Pick pick = solvers.pick(Optional.empty());
        return new Settling(plan, new Arrival(plan, receipts, done), boards, market,
                new Planning(rules, pick.solver(), pick.passedOver())).settle(progress);
    }
}
