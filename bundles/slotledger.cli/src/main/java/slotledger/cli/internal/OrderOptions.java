package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.trade.Offer;

/** Whose order, of which plan. */
final class OrderOptions {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--plan", paramLabel = "NUMBER", description = "Plan whose order it is; the approved one unless "
            + "given, or else the last.")
    private Integer plan;

    Path project() {
        return project;
    }

    OptionalInt plan() {
        return plan == null ? OptionalInt.empty() : OptionalInt.of(plan);
    }

    OrderStatus status(FleetDesk desk) throws DeskException {
        return desk.coordinator().order(project, plan());
    }

    /** The id of the offer of which somebody named the id or the part number. */
    static String offer(OrderStatus status, String part) throws DeskException {
        List<Offer> all = status.lines().stream().map(line -> line.purchase().offer()).toList();
        List<String> found = all.stream().filter(offer -> offer.id().equals(part) || offer.part().equals(part))
                .map(Offer::id).toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new DeskException(Trouble.INPUT, "\"" + part + "\" is " + (found.isEmpty() ? "no part" : "more than one "
                + "part") + " of the order; name one of " + all.stream().map(Offer::id).toList() + ".");
    }

    static LocalDate day(LocalDate given) {
        return given == null ? LocalDate.now() : given;
    }
}
