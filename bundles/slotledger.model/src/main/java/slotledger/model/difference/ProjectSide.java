package slotledger.model.difference;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.Plan;
import slotledger.model.project.ProjectState;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

/**
 * What a project says after an entry, as far as it is compared.
 *
 * @param entry    number of the entry
 * @param machines the inventory, with what people corrected
 * @param market   offers
 * @param shelf    modules owned
 * @param policy   what is wanted and allowed; empty where there is none
 * @param state    versions, plans and decisions that hold
 * @param plan     the last plan that holds; empty where there is none, or where it is the same on both sides
 */
public record ProjectSide(
        long entry,
        List<ObservedMachine> machines,
        Market market,
        Shelf shelf,
        Optional<Policy> policy,
        ProjectState state,
        Optional<Plan> plan) {

    public ProjectSide {
        machines = List.copyOf(machines);
        Objects.requireNonNull(market, "market");
        Objects.requireNonNull(shelf, "shelf");
        Objects.requireNonNull(policy, "policy");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(plan, "plan");
    }
}
