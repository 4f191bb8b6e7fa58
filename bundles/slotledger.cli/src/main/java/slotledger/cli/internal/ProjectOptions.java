package slotledger.cli.internal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Project;

/** Which project a command is about; single files can be named instead of those found in the folder. */
final class ProjectOptions {

    @Parameters(
            index = "0",
            paramLabel = "PROJECT",
            description = "Folder with the files fleet*, offers*, shelf*, policy*, choices*, mapping* and the folder "
                    + "boards/; or a project of \"project create\", packed or not.")
    private Path folder;

    @Option(names = "--fleet", paramLabel = "FILE", description = "Inventory to read instead; may be given again.")
    private List<Path> inventories;

    @Option(names = "--boards", paramLabel = "FOLDER", description = "Board files to read instead; may be given again.")
    private List<Path> boards;

    @Option(names = "--offers", paramLabel = "FILE", description = "Offers to read instead; may be given again.")
    private List<Path> offers;

    @Option(names = "--shelf", paramLabel = "FILE", description = "Shelf list to read instead; may be given again.")
    private List<Path> shelves;

    @Option(names = "--policy", paramLabel = "FILE", description = "Policy to read instead.")
    private Path policy;

    @Option(names = "--choices", paramLabel = "FILE", description = "What people decided, to read instead.")
    private Path choices;

    @Option(names = "--mapping", paramLabel = "FILE", description = "Column mapping to read instead.")
    private Path mapping;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "Day the offers must hold on; today unless given.")
    private LocalDate date;

    Project open(FleetDesk desk) throws DeskException {
        Project found = desk.open(folder);
        return new Project(
                found.title(),
                inventories == null ? found.inventories() : inventories,
                mapping == null ? found.mapping() : Optional.of(mapping),
                boards == null ? found.boards() : boards,
                offers == null ? found.offers() : offers,
                shelves == null ? found.shelves() : shelves,
                policy == null ? found.policy() : Optional.of(policy),
                choices == null ? found.choices() : Optional.of(choices),
                date == null ? found.date() : date,
                found.stored());
    }
}
