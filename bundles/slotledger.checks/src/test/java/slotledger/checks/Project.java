package slotledger.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The files of the project, as they lie beside this module. */
final class Project {

    private static final Set<String> NOT_OURS = Set.of("target", "out", ".git", "bin", "generated");

    private Project() {
    }

    /** The top folder: the first one above the working directory that holds a target platform. */
    static Path top() {
        for (Path folder = Path.of("").toAbsolutePath(); folder != null; folder = folder.getParent()) {
            if (Files.exists(folder.resolve("target-platform/pom.xml"))) {
                return folder;
            }
        }
        throw new IllegalStateException("No folder above the working directory holds a target platform.");
    }

    static List<Path> bundles() {
        try (Stream<Path> folders = Files.list(top().resolve("bundles"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("pom.xml"))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All files below a folder but what a build or an editor made. */
    static List<Path> filesBelow(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).filter(file -> isOurs(folder.relativize(file))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isOurs(Path relative) {
        for (Path part : relative) {
            if (NOT_OURS.contains(part.toString())) {
                return false;
            }
        }
        return true;
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " is not text", e);
        }
    }

    /** The path as messages show it. */
    static String name(Path file) {
        return top().relativize(file.toAbsolutePath()).toString().replace('\\', '/');
    }
}
