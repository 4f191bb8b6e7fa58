package slotledger.app.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;

/**
 * A folder that appears whole or not at all. Files are made in a folder beside it, which then takes its name. A list of
 * what was written stays in it, so that a later run replaces only its own files and never a person's.
 */
final class OutputFolder implements AutoCloseable {

    static final String LIST = ".slotledger-files";

    private final Path target;
    private final Path work;
    private final Thread sweeper;

    private OutputFolder(Path target, Path work) {
        this.target = target;
        this.work = work;
        this.sweeper = new Thread(this::sweep, "slotledger-sweeper");
        Runtime.getRuntime().addShutdownHook(sweeper);
    }

    /** Looks whether the target may be written, and makes the folder to work in. */
    static OutputFolder prepare(Path folder, boolean force) throws DeskException {
        Path target = folder.toAbsolutePath().normalize();
        try {
            mayReplace(target, folder, force);
            Path parent = target.getParent();
            if (parent == null) {
                throw new DeskException(Trouble.OUTPUT, "The output folder " + folder + " must not be a root folder.");
            }
            Files.createDirectories(parent);
            // Not a temporary directory: that one only its owner may read, and technicians must.
            return new OutputFolder(
                    target, Files.createDirectory(parent.resolve(".slotledger-" + UUID.randomUUID())));
        } catch (IOException problem) {
            throw unwritable(folder, problem);
        }
    }

    private static void mayReplace(Path target, Path shown, boolean force) throws IOException, DeskException {
        if (!Files.exists(target)) {
            return;
        }
        if (!Files.isDirectory(target)) {
            throw new DeskException(Trouble.EXISTS, shown + " is a file, but a folder is needed. Choose another name.");
        }
        List<Path> present = files(target);
        if (present.isEmpty()) {
            return;
        }
        if (!force) {
            throw new DeskException(Trouble.EXISTS, "The output folder " + shown + " is not empty. Choose another "
                    + "folder, or say --force to replace what an earlier run wrote there.");
        }
        Set<Path> own = ownFiles(target);
        List<Path> foreign = present.stream().filter(file -> !own.contains(file)).toList();
        if (!foreign.isEmpty()) {
            throw new DeskException(Trouble.EXISTS, "The output folder " + shown + " holds files Slotledger did not "
                    + "write, such as " + target.relativize(foreign.get(0)) + ". They would be lost: choose another "
                    + "folder, or move them away.");
        }
    }

    private static Set<Path> ownFiles(Path target) throws IOException {
        Path list = target.resolve(LIST);
        Set<Path> own = new HashSet<>();
        if (Files.isRegularFile(list)) {
            own.add(list);
            Files.readAllLines(list, StandardCharsets.UTF_8).forEach(line -> own.add(target.resolve(line).normalize()));
        }
        return own;
    }

    /** Where the files are to be made. */
    Path work() {
        return work;
    }

    /** Gives the folder its name; returns the files under their new names. */
    List<Path> publish(List<Path> made) throws DeskException {
        Path old = work.resolveSibling(work.getFileName() + "-old");
        try {
            List<String> names = files(work).stream()
                    .map(file -> work.relativize(file).toString().replace('\\', '/')).sorted().toList();
            Files.write(work.resolve(LIST), names, StandardCharsets.UTF_8);
            if (Files.exists(target)) {
                Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
            }
            Files.move(work, target, StandardCopyOption.ATOMIC_MOVE);
            delete(old);
            List<Path> published = new ArrayList<>();
            made.forEach(file -> published.add(target.resolve(work.relativize(file))));
            return published;
        } catch (IOException problem) {
            putBack(old);
            throw unwritable(target, problem);
        }
    }

    private void putBack(Path old) {
        if (Files.exists(old) && !Files.exists(target)) {
            try {
                Files.move(old, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (IOException stuck) {
                throw new IllegalStateException("The earlier files are in " + old + "; rename that folder.", stuck);
            }
        }
    }

    /** The program is being ended, by the interrupt key for one: nothing half-written stays. */
    private void sweep() {
        try {
            delete(work);
        } catch (IOException stillWritten) {
            // The writer puts files into it while it is taken away. What stays has a name that starts with a dot.
        }
    }

    /** Takes away what was made where it was not published. */
    @Override
    public void close() throws DeskException {
        try {
            Runtime.getRuntime().removeShutdownHook(sweeper);
        } catch (IllegalStateException ending) {
            // The sweeper runs already.
        }
        try {
            delete(work);
        } catch (IOException problem) {
            throw unwritable(work, problem);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !Files.isDirectory(path)).toList();
        }
    }

    private static DeskException unwritable(Path folder, IOException problem) {
        return new DeskException(Trouble.OUTPUT, "The folder " + folder + " can't be written: " + problem.getMessage()
                + ". Check that its disk has room and that you may write there.", problem);
    }
}
