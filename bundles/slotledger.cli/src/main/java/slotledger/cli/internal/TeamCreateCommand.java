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

/** Makes a team's project. */
@Command(
        name = "create",
        description = "Make a project in a prepared database, and a folder that leads to it; from a folder of plain "
                + "files, from a project with its whole history, or with nothing in it yet.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project team create school --url jdbc:postgresql://db.example.org/school --from old")
final class TeamCreateCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path folder;

    @Mixin
    private TeamOptions team;

    @Option(names = "--from", paramLabel = "FOLDER",
            description = "Folder of plain files to begin with; or a project, packed or not, whose history goes on.")
    private Path from;

    @Mixin
    private AuthorOptions author;


    TeamCreateCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        desk().projects().team().create(team.url(), team.user(), folder, Optional.ofNullable(from), author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(folder, answer);
        return answer.end(ExitCode.OK);
    }
}
