package slotledger.cli.internal;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The commands for projects that are kept with their whole history. */
@Command(
        name = "project",
        description = "Keep a project with its whole history: every file that was brought in, every plan, every "
                + "decision, who, when and why. Every command takes such a project in the place of a folder of files.",
        subcommands = {
            ProjectCreateCommand.class,
            ProjectImportCommand.class,
            ProjectHistoryCommand.class,
            ProjectCompareCommand.class,
            ProjectUndoCommand.class,
            ProjectRedoCommand.class,
            ProjectCorrectCommand.class,
            ProjectPinCommand.class,
            ProjectMuteCommand.class,
            ProjectOrderCommand.class,
            ProjectRoundsCommand.class,
            ProjectJobCommand.class,
            ProjectProveCommand.class,
            ProjectCloseCommand.class,
            ProjectFilesCommand.class,
            ProjectPackCommand.class,
            ProjectUnpackCommand.class,
            ProjectTeamCommand.class
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project create school --from my-school",
            "  slotledger plan school --out plan",
            "  slotledger project history school",
            "  slotledger project pack school school.slotledger"
        })
final class ProjectCommand implements Runnable {

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command? See below.");
    }
}
