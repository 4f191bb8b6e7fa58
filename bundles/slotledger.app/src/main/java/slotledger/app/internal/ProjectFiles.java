package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;
import slotledger.model.project.Part;

/** Finds a project's files by their usual names. */
final class ProjectFiles {

    private final Path folder;
    private final List<Path> files;

    private ProjectFiles(Path folder, List<Path> files) {
        this.folder = folder;
        this.files = files;
    }

    static Project in(Path folder, LocalDate date) throws DeskException {
        if (!Files.isDirectory(folder)) {
            throw new DeskException(Trouble.INPUT, "There is no folder " + folder
                    + ". Name the folder that holds the fleet, the offers, the shelf list, the policy and boards/.");
        }
        try (Stream<Path> listing = Files.list(folder)) {
            return new ProjectFiles(folder, listing.sorted().toList()).project(date);
        } catch (IOException problem) {
            throw new DeskException(Trouble.INPUT, "The folder " + folder + " can't be listed: " + problem.getMessage(),
                    problem);
        }
    }

    private Project project(LocalDate date) throws DeskException {
        List<Path> inventories = named(Part.FLEET);
        if (inventories.isEmpty()) {
            throw new DeskException(Trouble.INPUT, "The folder " + folder + " holds no inventory. Its name must begin "
                    + "with \"fleet\" and end in .xlsx, .xls or .csv, or be \"firmware\" for tables of the "
                    + "machines themselves; the command \"template\" writes one to fill in.");
        }
        return new Project(
                title(),
                inventories,
                only(Part.MAPPING),
                named(Part.BOARDS),
                named(Part.OFFERS),
                named(Part.SHELF),
                only(Part.POLICY),
                only(Part.CHOICES),
                date);
    }

    private String title() {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "fleet" : name.toString();
    }

    private Optional<Path> only(Part part) throws DeskException {
        List<Path> found = named(part);
        if (found.size() > 1) {
            throw new DeskException(Trouble.INPUT, "The folder " + folder + " must hold one file named " + part.id()
                    + "..., but there are " + found.size() + ": " + found.stream().map(Path::getFileName).toList()
                    + ". Move away those that are not meant.");
        }
        return found.stream().findFirst();
    }

    private List<Path> named(Part part) {
        return files.stream().filter(file -> PartNames.partOf(file).equals(Optional.of(part))).toList();
    }
}
