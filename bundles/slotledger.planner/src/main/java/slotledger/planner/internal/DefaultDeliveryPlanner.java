package slotledger.planner.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.DeliveryPlanner;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.delivery.Arrival;
import slotledger.solver.MilpSolver;

/** Allots what arrived with the best of the solvers that run here. */
@Component
public final class DefaultDeliveryPlanner implements DeliveryPlanner {

    private final Solvers solvers;

    @Activate
    public DefaultDeliveryPlanner(
            @Reference(service = MilpSolver.class) List<Map.Entry<Map<String, Object>, MilpSolver>> solvers) {
        this.solvers = new Solvers(solvers.stream()
                .sorted(Comparator.comparingInt(solver -> -ranking(solver.getKey())))
                .map(Map.Entry::getValue)
                .toList());
    }

    private static int ranking(Map<String, Object> properties) {
        return properties.get("service.ranking") instanceof Integer ranking ? ranking : 0;
    }

    @Override
    public Delivery arrived(Plan plan, List<Receipt> receipts, Set<AssetTag> done, Progress progress)
            throws PlannerException {
        return new Arrival(plan, receipts, done).allot(solvers.pick(Optional.empty()).solver(), progress);
    }
}
