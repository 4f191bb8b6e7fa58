package slotledger.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Makes a project of a packed one. */
@Command(
        name = "unpack",
        description = "Make a project of a packed one, in a new folder.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project unpack school.slotledger school")
final class ProjectUnpackCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "FILE", description = "Packed project.")
    private Path file;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path folder;

    ProjectUnpackCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        desk().projects().unpack(file, folder);
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(folder, answer);
        return answer.end(ExitCode.OK);
    }
}
