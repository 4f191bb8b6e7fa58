package slotledger.cli.internal;

import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.project.TeamRole;
import slotledger.model.task.Progress;

/** Prepares a database for a team. */
@Command(
        name = "prepare",
        description = "Make tables, roles and rights in a database, or bring those of an earlier release to today's. "
                + "Who does it must own the database and may make roles; once is enough.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project team prepare --url jdbc:postgresql://db.example.org/school --user owner")
final class TeamPrepareCommand extends DeskCommand {

    @Mixin
    private TeamOptions team;


    TeamPrepareCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        desk().projects().team().prepare(team.url(), team.user());
        Answer.Builder answer = new Answer.Builder();
        answer.line("The database is prepared. It has these roles, which \"project team admit\" gives to people:");
        answer.line("");
        for (TeamRole role : TeamRole.values()) {
            answer.item(role.id(), "may " + role.text());
        }
        return answer.fact("roles", Stream.of(TeamRole.values()).map(TeamRole::id).toList()).end(ExitCode.OK);
    }
}
