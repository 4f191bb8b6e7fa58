package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.project.Author;
import slotledger.model.project.Entry;

/** Takes an entry back. */
@Command(
        name = "undo",
        description = "Take back the last change that holds, or a named entry. It stays in the history.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger project undo school",
            "  slotledger project undo school --entry 12 --why \"counted again\""})
final class ProjectUndoCommand extends EntryCommand {

    @Option(names = "--entry", paramLabel = "NUMBER", description = "Entry to take back.")
    private Long entry;

    ProjectUndoCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Long named() {
        return entry;
    }

    @Override
    Entry change(Path folder, OptionalLong which, Author by) throws DeskException {
        return desk().projects().undo(folder, which, by);
    }
}
