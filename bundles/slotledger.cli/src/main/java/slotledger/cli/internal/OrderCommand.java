package slotledger.cli.internal;

import picocli.CommandLine.Mixin;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.task.Progress;

/** A command that writes down what happened to an order, and shows how far it has come then. */
abstract class OrderCommand extends DeskCommand {

    @Mixin
    private OrderOptions order;

    @Mixin
    private AuthorOptions author;

    OrderCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    /** What happened to the order that is shown so far. */
    abstract TradeEvent happened(OrderStatus status) throws DeskException;

    @Override
    final Answer work(Progress progress) throws DeskException {
        TradeEvent event;
        try {
            event = happened(order.status(desk()));
        } catch (IllegalArgumentException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
        Answer.Builder answer = new Answer.Builder();
        OrderText.report(answer, desk().coordinator().record(order.project(), event, author.author()));
        return answer.end(ExitCode.OK);
    }
}
