package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands for projects that a team keeps in one database. */
@Command(
        name = "team",
        description = "Keep projects of a team in one PostgreSQL database. What is made here is a folder that leads to "
                + "such a project; every command takes it like any other project.",
        subcommands = {
            TeamPrepareCommand.class,
            TeamCreateCommand.class,
            TeamJoinCommand.class,
            TeamAdmitCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project team prepare --url jdbc:postgresql://db.example.org/school --user owner",
            "  slotledger project team create school --url jdbc:postgresql://db.example.org/school --user owner",
            "  slotledger project team admit school --user ben --role technician",
            "  slotledger project team join school --url jdbc:postgresql://db.example.org/school --user ben",
            "",
            "Passwords come from PostgreSQL's password file (.pgpass), from PGPASSWORD, or are asked for; never put",
            "one into an address. What the address says of encryption (sslmode=verify-full) holds."
        })
final class ProjectTeamCommand implements Runnable {

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? See below.");
    }
}
