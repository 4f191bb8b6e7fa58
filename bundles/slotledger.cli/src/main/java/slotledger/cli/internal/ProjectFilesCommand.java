package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.task.Progress;

/** Takes plain files out of a project. */
@Command(
        name = "files",
        description = "Write a project's files into a new folder, byte for byte as they were brought in; or one of its "
                + "plans.",
        footerHeading = "%nExamples:%n",
        footer = {
            "  slotledger project files school --out plain-files",
            "  slotledger project files school --entry 7 --out as-it-was",
            "  slotledger project files school --plan 2 --out plan.json"
        })
final class ProjectFilesCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project, or packed project.")
    private Path project;

    @Option(names = "--entry", paramLabel = "NUMBER", description = "As they were after this entry; now unless given.")
    private Long entry;

    @Option(names = "--plan", paramLabel = "NUMBER", description = "Write the plan of this number instead.")
    private Integer plan;

    @Option(names = "--out", required = true, paramLabel = "PATH", description = "Folder to write, or file for a plan.")
    private Path out;

    @Option(names = "--force", description = "Replace what an earlier run wrote there; never a file of yours.")
    private boolean force;

    ProjectFilesCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        List<Path> files = List.of(out);
        if (plan == null) {
            files = desk().projects().writeFiles(project,
                    entry == null ? OptionalLong.empty() : OptionalLong.of(entry), out, force);
        } else {
            desk().projects().writePlan(project, plan, out, force);
        }
        List<String> names = files.stream().map(Path::toString).toList();
        return new Answer.Builder().items("Files", names).fact("files", names).end(ExitCode.OK);
    }
}
