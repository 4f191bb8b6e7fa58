package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.project.Author;
import slotledger.model.project.Entry;
import slotledger.model.task.Progress;

/** A command about one entry of a project's history. */
abstract class EntryCommand extends DeskCommand {

    @Parameters(index = "0", paramLabel = "PROJECT", description = "Folder of the project.")
    private Path project;

    @Mixin
    private AuthorOptions author;

    EntryCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    /** The entry somebody named; null where nobody did. */
    abstract Long named();

    /** Does it to the entry named, or to the one it concerns where none is; gives the entry that says so. */
    abstract Entry change(Path folder, OptionalLong which, Author by) throws DeskException;

    @Override
    final Answer work(Progress progress) throws DeskException {
        OptionalLong which = named() == null ? OptionalLong.empty() : OptionalLong.of(named());
        Entry made = change(project, which, author.author());
        Answer.Builder answer = new Answer.Builder();
        new HistoryReport(desk()).report(project, List.of(made), answer);
        return answer.end(ExitCode.OK);
    }
}
