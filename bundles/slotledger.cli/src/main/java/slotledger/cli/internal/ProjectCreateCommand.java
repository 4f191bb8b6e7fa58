package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Makes a project. */
@Command(
        name = "create",
        description = "Make a project in a new folder, from a folder of plain files or with nothing in it yet.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project create school --from my-school")
final class ProjectCreateCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path folder;

    @Option(names = "--from", paramLabel = "FOLDER", description = "Folder of plain files to begin with.")
    private Path from;

    @Mixin
    private AuthorOptions author;

    ProjectCreateCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        desk().projects().create(folder, Optional.ofNullable(from), author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(folder, answer);
        return answer.end(ExitCode.OK);
    }
}
