package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.Settlement;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.task.Progress;

/** Shares out what arrived. */
@Command(
        name = "allot",
        description = "Share out what arrived so that the most weighted targets are met soonest, and write job sheets "
                + "and rounds of the machines that can be done now. With --final nothing more will come: the rest is "
                + "planned anew only as far as that brings targets, and kept as a plan of the project.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger project order allot school --out now",
            "  slotledger project order allot school --final --out end"})
final class OrderAllotCommand extends DeskCommand {

    @Mixin
    private OrderOptions order;

    @Option(names = "--final", description = "Nothing more will come; ends the order.")
    private boolean ends;

    @Option(names = "--out", paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    @Mixin
    private AuthorOptions author;

    OrderAllotCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        if (ends && out == null) {
            throw new DeskException(Trouble.INPUT, "A new plan comes of --final: name the folder for it, with --out.");
        }
        OrderStatus status = order.status(desk());
        Survey survey = desk().survey(desk().open(order.project()), progress);
        Optional<Settlement> settled = ends
                ? Optional.of(desk().coordinator().settle(order.project(), order.plan(), survey, progress))
                : Optional.empty();
        Delivery delivery = settled.isPresent() ? settled.get().delivery()
                : desk().coordinator().allot(order.project(), order.plan(), progress);
        Answer.Builder answer = new Answer.Builder();
        ArrivedText.lines(answer, delivery);
        settled.ifPresentOrElse(end -> ArrivedText.settlement(answer, end),
                () -> ArrivedText.machines(answer, delivery));
        if (out != null) {
            List<Path> written = settled.isPresent()
                    ? desk().exportWork(survey, settled.get(), out, force, progress)
                    : desk().exportWork(survey, delivery, out, force, progress);
            List<String> files = written.stream().map(Path::toString).toList();
            answer.items("Files", files).fact("files", files);
        }
        if (ends) {
            new PlanKeeper(desk()).keep(survey, out, answer);
            desk().coordinator().record(order.project(), new TradeEvent.Ended(status.number()), author.author());
        }
        return answer.end(ExitCode.OK);
    }
}
