package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.FleetDesk;
import slotledger.model.project.TeamRole;
import slotledger.model.task.Progress;

/** Gives a person a role. */
@Command(
        name = "admit",
        description = "Give a user of the database exactly one role: coordinator, procurement, technician or reader. "
                + "It holds for all projects of the database. Done by an owner of the roles or an administrator.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project team admit school --user ben --role technician")
final class TeamAdmitCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder that leads to a project of the database.")
    private Path project;

    @Option(names = "--user", required = true, paramLabel = "NAME",
            description = "User of the database; made without a password where there is none.")
    private String user;

    @Option(names = "--role", required = true, paramLabel = "ROLE",
            description = "coordinator (may do everything), procurement (offers, orders, receipts), technician (what "
                    + "happens at the machines) or reader.")
    private String role;


    TeamAdmitCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        TeamRole given = Stream.of(TeamRole.values()).filter(each -> each.id().equals(role)).findFirst()
                .orElseThrow(() -> new DeskException(Trouble.INPUT, "There is no role " + role + "; there are "
                        + Stream.of(TeamRole.values()).map(TeamRole::id).collect(Collectors.joining(", ")) + "."));
        boolean made = desk().projects().team().admit(project, user, given);
        Answer.Builder answer = new Answer.Builder();
        answer.line(user + " is " + given.id() + " now and may " + given.text() + ".");
        if (made) {
            answer.line("The user is new and has no password yet. Set one in psql: \\password " + user);
        }
        return answer.fact("user", user).fact("role", given.id()).fact("made", made).end(ExitCode.OK);
    }
}
