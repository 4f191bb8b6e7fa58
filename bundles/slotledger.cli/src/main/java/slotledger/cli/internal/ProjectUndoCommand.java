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

/** Takes an entry back. */
@Command(
        name = "undo",
        description = "Take back the last change that holds, or a named entry. It stays in the history.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger project undo school",
            "  slotledger project undo school --entry 12 --why \"counted again\""})
final class ProjectUndoCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Option(names = "--entry", paramLabel = "NUMBER", description = "Entry to take back.")
    private Long entry;

    @Mixin
    private AuthorOptions author;

    ProjectUndoCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Answer work(Progress progress) throws DeskException {
        OptionalLong which = entry == null ? OptionalLong.empty() : OptionalLong.of(entry);
        Entry made = desk().projects().undo(project, which, author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, List.of(made), answer);
        return answer.end(ExitCode.OK);
    }
}
