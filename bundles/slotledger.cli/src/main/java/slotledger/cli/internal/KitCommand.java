package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Writes the scripts that collect firmware tables. */
@Command(
        name = "kit",
        description = "Write scripts that drop one file a computer into a share: its memory, board, processor and "
                + "identity, nothing about people. Needs no project.",
        footerHeading = "%nExample:%n",
        footer = "  slotledger kit --out collection-kit")
final class KitCommand extends DeskCommand {

    @Option(names = "--out", required = true, paramLabel = "FOLDER", description = "Where to write the scripts.")
    private Path out;

    @Option(names = "--force", description = "Replace the scripts of an earlier run.")
    private boolean force;

    KitCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<Path> files = desk().firmware().writeKit(out, force);
        List<String> names = files.stream().map(Path::toString).toList();
        return new Answer.Builder().items("Files", names)
                .item("Next", "read README.txt, then run the script on each computer")
                .fact("files", names).end(ExitCode.OK);
    }
}
