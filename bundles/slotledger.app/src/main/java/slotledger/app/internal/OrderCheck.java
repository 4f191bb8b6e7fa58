package slotledger.app.internal;

import java.util.List;
import java.util.Optional;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;

/** Refuses what can't have happened to an order. */
final class OrderCheck {

    private final OrderStatus status;

    private OrderCheck(OrderStatus status) {
        this.status = status;
    }

    static void mustFit(TradeEvent event, OrderStatus status) throws DeskException {
        new OrderCheck(status).mustFit(event);
    }

    private void mustFit(TradeEvent event) throws DeskException {
        if (event instanceof TradeEvent.Approved) {
            if (status.approval().isPresent()) {
                throw refused("was approved already, in entry " + status.approval().get().entry() + ".");
            }
            return;
        }
        if (status.approval().isEmpty()) {
            throw refused("was not approved yet. Whoever answers for the money approves it first: "
                    + "\"project order approve\".");
        }
        if (event instanceof TradeEvent.Sent sent) {
            mustSupply(sent.supplier());
        } else if (event instanceof TradeEvent.Confirmed said) {
            if (mustSupply(said.supplier()).sent().isEmpty()) {
                throw refused("was not sent to " + said.supplier() + " yet.");
            }
        } else if (event instanceof TradeEvent.Received came) {
            mustBeOrdered(came.offer());
        } else if (event instanceof TradeEvent.Drawn taken) {
            OrderStatus.Line line = mustBeOrdered(taken.offer());
            if (taken.modules() > line.good() - line.drawn()) {
                throw refused("has " + (line.good() - line.drawn()) + " modules of " + taken.offer()
                        + " that are there and not drawn, fewer than " + taken.modules() + ".");
            }
        }
    }

    private OrderStatus.AtSupplier mustSupply(String supplier) throws DeskException {
        Optional<OrderStatus.AtSupplier> found = status.suppliers().stream()
                .filter(each -> each.supplier().equals(supplier)).findFirst();
        if (found.isEmpty()) {
            throw refused("orders nothing of \"" + supplier + "\"; its suppliers are "
                    + names(status.suppliers().stream().map(OrderStatus.AtSupplier::supplier).toList()) + ".");
        }
        return found.get();
    }

    private OrderStatus.Line mustBeOrdered(String offer) throws DeskException {
        Optional<OrderStatus.Line> found = status.lines().stream()
                .filter(line -> line.purchase().offer().id().equals(offer)).findFirst();
        if (found.isEmpty()) {
            throw refused("has no line \"" + offer + "\"; its lines are "
                    + names(status.lines().stream().map(line -> line.purchase().offer().id()).toList()) + ".");
        }
        return found.get();
    }

    private static String names(List<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", names);
    }

    private DeskException refused(String why) {
        return new DeskException(Trouble.INPUT, "The order of plan " + status.number() + " " + why
                + " Nothing was written down.");
    }
}
