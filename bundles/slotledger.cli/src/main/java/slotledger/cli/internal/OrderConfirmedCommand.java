package slotledger.cli.internal;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;

/** A supplier confirmed. */
@Command(
        name = "confirmed",
        description = "Write down that a supplier confirmed the order.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project order confirmed school --supplier Quillon --number A-7 --expected 2026-12-11")
final class OrderConfirmedCommand extends OrderCommand {

    @Option(names = "--supplier", required = true, paramLabel = "NAME", description = "As the order names it.")
    private String supplier;

    @Option(names = "--day", paramLabel = "DATE", description = "When; today unless given.")
    private LocalDate day;

    @Option(names = "--number", paramLabel = "TEXT", defaultValue = "", description = "The supplier's number for it.")
    private String number = "";

    @Option(names = "--expected", paramLabel = "DATE", description = "When the goods are to come.")
    private LocalDate expected;

    OrderConfirmedCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    TradeEvent happened(OrderStatus status) {
        return new TradeEvent.Confirmed(status.number(), supplier, OrderOptions.day(day), number,
                Optional.ofNullable(expected));
    }
}
