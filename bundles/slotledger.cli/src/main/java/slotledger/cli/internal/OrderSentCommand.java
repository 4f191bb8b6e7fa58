package slotledger.cli.internal;

import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;

/** The order went out. */
@Command(
        name = "sent",
        description = "Write down that the order went out to a supplier.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project order sent school --supplier Quillon --day 2026-12-01")
final class OrderSentCommand extends OrderCommand {

    @Option(names = "--supplier", required = true, paramLabel = "NAME", description = "As the order names it.")
    private String supplier;

    @Option(names = "--day", paramLabel = "DATE", description = "When; today unless given.")
    private LocalDate day;

    OrderSentCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    TradeEvent happened(OrderStatus status) {
        return new TradeEvent.Sent(status.number(), supplier, OrderOptions.day(day));
    }
}
