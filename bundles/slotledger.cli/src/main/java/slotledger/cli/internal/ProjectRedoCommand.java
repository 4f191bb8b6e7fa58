package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.OptionalLong;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.model.project.Author;
import slotledger.model.project.Entry;

/** Makes an entry hold again. */
@Command(
        name = "redo",
        description = "Make the change hold again that was taken back last, or a named entry.",
        footerHeading = "%nExamples:%n",
        footer = {"  slotledger project redo school",
            "  slotledger project redo school --entry 12 --why \"counted again\""})
final class ProjectRedoCommand extends EntryCommand {

    @Option(names = "--entry", paramLabel = "NUMBER", description = "Entry to restore.")
    private Long entry;

    ProjectRedoCommand(FleetDesk desk, Console console) {
        super(desk, console);
    }

    @Override
    Long named() {
        return entry;
    }

    @Override
    Entry change(Path folder, OptionalLong which, Author by) throws DeskException {
        return desk().projects().redo(folder, which, by);
    }
}
