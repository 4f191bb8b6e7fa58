package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Project;

/** Finds a project's files by their usual names. */
final class ProjectFiles {

    private static final Set<String> SHEETS = Set.of("xlsx", "xls", "csv");
    private static final Set<String> POLICIES = Set.of("xlsx", "xls", "csv", "yaml", "yml", "txt");
    private static final Set<String> CHOICES = Set.of("yaml", "yml", "txt");
    private static final Set<String> TEXTS = Set.of("txt", "yaml", "yml", "csv");

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
        List<Path> inventories = named("fleet", SHEETS);
        if (inventories.isEmpty()) {
            throw new DeskException(Trouble.INPUT, "The folder " + folder + " holds no inventory. Its name must begin "
                    + "with \"fleet\" and end in .xlsx, .xls or .csv; the command \"template\" writes one to fill in.");
        }
        return new Project(
                title(),
                inventories,
                only("mapping", TEXTS),
                files.stream().filter(Files::isDirectory).filter(named("boards")).toList(),
                named("offers", SHEETS),
                named("shelf", SHEETS),
                only("policy", POLICIES),
                only("choices", CHOICES),
                date);
    }

    private String title() {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return name == null ? "fleet" : name.toString();
    }

    private Optional<Path> only(String start, Set<String> endings) throws DeskException {
        List<Path> found = named(start, endings);
        if (found.size() > 1) {
            throw new DeskException(Trouble.INPUT, "The folder " + folder + " must hold one file named " + start
                    + "..., but there are " + found.size() + ": " + found.stream().map(Path::getFileName).toList()
                    + ". Move away those that are not meant.");
        }
        return found.stream().findFirst();
    }

    private List<Path> named(String start, Set<String> endings) {
        return files.stream()
                .filter(Files::isRegularFile)
                .filter(named(start))
                .filter(file -> endings.contains(ending(file)))
                .toList();
    }

    private static Predicate<Path> named(String start) {
        return path -> path.getFileName().toString().toLowerCase(Locale.ROOT).startsWith(start);
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }
}
