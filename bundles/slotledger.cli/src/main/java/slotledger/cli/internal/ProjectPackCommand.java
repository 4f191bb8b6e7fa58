package slotledger.cli.internal;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Packs a project into one file. */
@Command(
        name = "pack",
        description = "Pack a project with its whole history into one file to mail or back up. Every command reads it "
                + "as it is; to go on working, unpack it.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger project pack school school.slotledger")
final class ProjectPackCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Parameters(index = "1", paramLabel = "FILE", description = "File to write, whose name ends in .slotledger.")
    private Path file;

    @Option(names = "--force", description = "Replace an older packed file.")
    private boolean force;

    ProjectPackCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        desk().projects().pack(project, file, force);
        return new Answer.Builder().item("Files", file.toString()).fact("file", file.toString()).end(ExitCode.OK);
    }
}
