package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.project.Part;

/** Sorts plain files into the parts of a project. */
final class PartFiles {

    /** Parts of which there is one file. */
    private static final Set<Part> SINGLE = Set.of(Part.MAPPING, Part.POLICY, Part.CHOICES);

    private final Map<Part, Map<String, Path>> parts = new EnumMap<>(Part.class);

    private PartFiles() {
    }

    /**
     * Path in a folder of plain files to file, by part.
     *
     * @param sources files and folders of boards, named as usual, or folders of such
     */
    static Map<Part, Map<String, Path>> in(List<Path> sources) throws DeskException {
        PartFiles files = new PartFiles();
        for (Path source : sources) {
            try {
                files.add(source);
            } catch (IOException problem) {
                throw new DeskException(Trouble.INPUT, source + " can't be read: " + problem.getMessage(), problem);
            }
        }
        for (Part part : SINGLE) {
            Map<String, Path> found = files.parts.getOrDefault(part, Map.of());
            if (found.size() > 1) {
                throw new DeskException(Trouble.INPUT, "There must be one file named " + part.id() + "..., but there"
                        + " are " + found.size() + ": " + found.keySet() + ". Leave out those that are not meant.");
            }
        }
        return files.parts;
    }

    private void add(Path source) throws IOException, DeskException {
        if (!Files.exists(source)) {
            throw new DeskException(Trouble.INPUT, "There is no file or folder " + source + ".");
        }
        Path named = source.toAbsolutePath().normalize();
        Optional<Part> part = PartNames.partOf(named);
        if (part.isPresent()) {
            add(part.get(), named, named.getParent());
            return;
        }
        if (!Files.isDirectory(named)) {
            throw new DeskException(Trouble.INPUT, "It can't be told what " + source + " is. Its name must begin with "
                    + "fleet, offers, shelf, policy, choices or mapping, and end as README says; boards are a folder.");
        }
        boolean any = false;
        try (Stream<Path> listing = Files.list(named)) {
            for (Path file : listing.sorted().toList()) {
                Optional<Part> inside = PartNames.partOf(file);
                if (inside.isPresent()) {
                    add(inside.get(), file, named);
                    any = true;
                }
            }
        }
        if (!any) {
            throw new DeskException(Trouble.INPUT, "The folder " + source + " holds no file of a project. The command "
                    + "\"template\" writes some to fill in.");
        }
    }

    private void add(Part part, Path file, Path top) throws IOException, DeskException {
        if (!Files.isDirectory(file)) {
            put(part, top.relativize(file).toString(), file);
            return;
        }
        try (Stream<Path> walk = Files.walk(file)) {
            for (Path each : walk.filter(Files::isRegularFile).sorted().toList()) {
                put(part, top.relativize(each).toString(), each);
            }
        }
    }

    private void put(Part part, String path, Path file) throws DeskException {
        String name = path.replace(file.getFileSystem().getSeparator(), "/");
        if (name.contains(":") || name.contains("\\")) {
            throw new DeskException(Trouble.INPUT, "The file " + file + " can't be kept, because not every computer "
                    + "can have a file of that name. Rename it without : and \\.");
        }
        if (parts.computeIfAbsent(part, unknown -> new TreeMap<>()).putIfAbsent(name, file) != null) {
            throw new DeskException(Trouble.INPUT, "There are two files " + name + ". Rename one of them.");
        }
    }
}
