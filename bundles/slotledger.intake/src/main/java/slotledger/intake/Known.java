package slotledger.intake;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.Fleet;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.trade.Market;
import slotledger.model.trade.Shelf;

/**
 * What people can speak of when they decide something: it was read before.
 *
 * @param fleet      machines whose board is known
 * @param unresolved machines that can't be judged
 * @param market     offers
 * @param shelf      modules owned
 */
public record Known(Fleet fleet, List<ObservedMachine> unresolved, Market market, Shelf shelf) {

    public Known {
        Objects.requireNonNull(fleet, "fleet");
        unresolved = List.copyOf(unresolved);
        Objects.requireNonNull(market, "market");
        Objects.requireNonNull(shelf, "shelf");
    }
}
