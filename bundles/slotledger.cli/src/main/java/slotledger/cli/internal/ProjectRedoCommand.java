package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.project.Entry;
import slotledger.model.task.Progress;

/** Makes an entry hold again. */
@Command(
        name = "redo",
        description = "Make the change hold again that was taken back last, or a named entry.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger project redo school",
            "  slotledger project redo school --entry 12 --why \"counted again\""})
final class ProjectRedoCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--entry", paramLabel = "NUMBER", description = "Entry to restore.")
    private Long entry;

    @Mixin
    private AuthorOptions author;

    ProjectRedoCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        OptionalLong which = entry == null ? OptionalLong.empty() : OptionalLong.of(entry);
        Entry made = desk().projects().redo(project, which, author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, List.of(made), answer);
        return answer.end(ExitCode.OK);
    }
}
