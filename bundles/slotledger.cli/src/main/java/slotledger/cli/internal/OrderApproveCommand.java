package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;

/** Somebody answers for the money. */
@Command(
        name = "approve",
        description = "Approve the order of a plan: from now on it stays as it is, whatever is planned later.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project order approve school --by \"Head of school\"")
final class OrderApproveCommand extends OrderCommand {

    @Option(names = "--by", required = true, paramLabel = "NAME", description = "Who answers for the money.")
    private String by;

    OrderApproveCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    TradeEvent happened(OrderStatus status) {
        return new TradeEvent.Approved(status.number(), by);
    }
}
