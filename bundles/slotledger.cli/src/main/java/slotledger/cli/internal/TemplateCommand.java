package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Writes the files to fill in. */
@Command(
        name = "template",
        description = "Write a fleet, offers, shelf, policy and board file to fill in, with explanations in them.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger template --out my-school")
final class TemplateCommand extends DeskCommand {

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Folder to write; made new.")
    private Path out;

    @Option(names = "--force", description = "Replace templates written there earlier.")
    private boolean force;

    TemplateCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<Path> files = desk().writeTemplates(out, force);
        return new Answer.Builder()
                .items("Files", files.stream().map(Path::toString).toList())
                .fact("files", files.stream().map(Path::toString).toList())
                .end(ExitCode.OK);
    }
}
