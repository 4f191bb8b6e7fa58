package slotledger.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Shows a project's entries. */
@Command(
        name = "history",
        description = "Show every entry of a project: who, when, what and why, and what holds now.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project history school")
final class ProjectHistoryCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project, or packed project.")
    private Path project;

    ProjectHistoryCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, answer);
        return answer.end(ExitCode.OK);
    }
}
