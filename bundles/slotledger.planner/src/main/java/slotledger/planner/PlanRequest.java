package slotledger.planner;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Fleet;
import slotledger.model.plan.Plan;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

/**
 * Everything a plan is made from.
 *
 * @param title   name of the project
 * @param fleet   machines and boards
 * @param market  what can be bought; prices are turned into the currency of the policy where their rate is stated
 * @param shelf   what is owned
 * @param policy  what is wanted and allowed
 * @param date    offers must hold on this day
 * @param choices what people decided beforehand
 * @param before  an earlier plan to begin with, where there is one; it need not fit any more
 * @param solver  part of the name of the solver to use; empty for the best that runs here
 */
public record PlanRequest(
        String title,
        Fleet fleet,
        Market market,
        Shelf shelf,
        Policy policy,
        LocalDate date,
        Choices choices,
        Optional<Plan> before,
        Optional<String> solver) {

    /** Nobody decided anything, and there is no earlier plan. */
    public PlanRequest(String title, Fleet fleet, Market market, Shelf shelf, Policy policy, LocalDate date) {
        this(title, fleet, market, shelf, policy, date, Choices.NONE, Optional.empty());
    }

    /** The best solver that runs here is used. */
    public PlanRequest(
            String title,
            Fleet fleet,
            Market market,
            Shelf shelf,
            Policy policy,
            LocalDate date,
            Choices choices,
            Optional<Plan> before) {
        this(title, fleet, market, shelf, policy, date, choices, before, Optional.empty());
    }

    /** The same with a solver of one's own choice. */
    public PlanRequest with(Optional<String> other) {
        return new PlanRequest(title, fleet, market, shelf, policy, date, choices, before, other);
    }

    public PlanRequest {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(fleet, "fleet");
        Objects.requireNonNull(shelf, "shelf");
        Objects.requireNonNull(policy, "policy");
        market = market.in(policy);
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(choices, "choices");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(solver, "solver");
    }

    /** The same with another policy. */
    public PlanRequest with(Policy other) {
        return new PlanRequest(title, fleet, market, shelf, other, date, choices, before, solver);
    }

    /** The same with other decisions. */
    public PlanRequest with(Choices other) {
        return new PlanRequest(title, fleet, market, shelf, policy, date, other, before, solver);
    }
}
