package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Shows how far an order has come. */
@Command(
        name = "show",
        description = "Show how far the order of a plan has come: who approved it, what each supplier said, what "
                + "arrived, what is missing.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project order show school")
final class OrderShowCommand extends DeskCommand {

    @Mixin
    private OrderOptions order;

    OrderShowCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Answer.Builder answer = new Answer.Builder();
        OrderText.report(answer, order.status(desk()));
        return answer.end(ExitCode.OK);
    }
}
