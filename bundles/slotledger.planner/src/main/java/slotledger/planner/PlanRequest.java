package slotledger.planner;

import java.time.LocalDate;
import java.util.Objects;
import slotledger.model.machine.Fleet;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Shelf;

/**
 * Everything a plan is made from.
 *
 * @param title  name of the project
 * @param fleet  machines and boards
 * @param market what can be bought
 * @param shelf  what is owned
 * @param policy what is wanted and allowed
 * @param date   offers must hold on this day
 */
public record PlanRequest(String title, Fleet fleet, Market market, Shelf shelf, Policy policy, LocalDate date) {

    public PlanRequest {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(fleet, "fleet");
        Objects.requireNonNull(market, "market");
        Objects.requireNonNull(shelf, "shelf");
        Objects.requireNonNull(policy, "policy");
        Objects.requireNonNull(date, "date");
    }
}
