package slotledger.cli.internal;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;

/** Spares were drawn. */
@Command(
        name = "draw",
        description = "Write down that modules that arrived were used beside the plan, such as a spare for one that "
                + "failed.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project order draw school --part QF-D4U8 --machine K-17 --why-drawn \"one failed\"")
final class OrderDrawCommand extends OrderCommand {

    @Option(names = "--part", required = true, paramLabel = "PART", description = "Part number, or the offer's id.")
    private String part;

    @Option(names = "--modules", paramLabel = "NUMBER", defaultValue = "1", description = "How many; one unless given.")
    private int modules = 1;

    @Option(names = "--machine", paramLabel = "TAG", description = "Where they went; elsewhere unless given.")
    private String machine;

    @Option(names = "--why-drawn", required = true, paramLabel = "TEXT", description = "What they were needed for.")
    private String reason;

    @Option(names = "--day", paramLabel = "DATE", description = "When; today unless given.")
    private LocalDate day;

    OrderDrawCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    TradeEvent happened(OrderStatus status) throws DeskException {
        return new TradeEvent.Drawn(status.number(), OrderOptions.day(day), OrderOptions.offer(status, part), modules,
                Optional.ofNullable(machine).map(AssetTag::new), reason);
    }
}
