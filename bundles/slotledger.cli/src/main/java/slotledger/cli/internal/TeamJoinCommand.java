package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Leads to a team's project. */
@Command(
        name = "join",
        description = "Make a folder that leads to a project of a team's database.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project team join school --url jdbc:postgresql://db.example.org/school --user ben")
final class TeamJoinCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path folder;

    @Mixin
    private TeamOptions team;

    @Option(names = "--project", paramLabel = "ID",
            description = "Which project, where the database holds several; without it they are listed.")
    private UUID project;


    TeamJoinCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        desk().projects().team().join(team.url(), team.user(), folder, Optional.ofNullable(project));
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(folder, answer);
        return answer.end(ExitCode.OK);
    }
}
