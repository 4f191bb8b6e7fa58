package slotledger.cli.internal;

import java.time.LocalDate;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;

/** A parcel arrived. */
@Command(
        name = "received",
        description = "Write down that a part of an order line arrived; each parcel is written down "
                + "by itself. Counts are modules.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project order received school --part QF-D4U8 --good 18 --wrong 1 --dead 1 --tested")
final class OrderReceivedCommand extends OrderCommand {

    @Option(names = "--part", required = true, paramLabel = "PART", description = "Part number, or the offer's id.")
    private String part;

    @Option(names = "--good", paramLabel = "NUMBER", description = "Modules that are as ordered.")
    private int good;

    @Option(names = "--wrong", paramLabel = "NUMBER", description = "Modules that are not what was ordered.")
    private int wrong;

    @Option(names = "--dead", paramLabel = "NUMBER", description = "Modules that are dead on arrival.")
    private int dead;

    @Option(names = "--tested", description = "The good ones were tested.")
    private boolean tested;

    @Option(names = "--note", paramLabel = "TEXT", defaultValue = "", description = "Delivery note, test, damage.")
    private String note = "";

    @Option(names = "--day", paramLabel = "DATE", description = "When; today unless given.")
    private LocalDate day;

    OrderReceivedCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    TradeEvent happened(OrderStatus status) throws DeskException {
        return new TradeEvent.Received(status.number(), OrderOptions.day(day), OrderOptions.offer(status, part), good,
                wrong, dead, tested, note);
    }
}
