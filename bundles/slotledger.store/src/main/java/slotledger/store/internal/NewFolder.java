package slotledger.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.UUID;
import java.util.stream.Stream;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** A folder that appears under its name when all is in it, and not at all before. */
final class NewFolder implements AutoCloseable {

    private final Path target;
    private final Path work;

    private NewFolder(Path target, Path work) {
        this.target = target;
        this.work = work;
    }

    static NewFolder at(Path folder) throws StoreException {
        Path target = folder.toAbsolutePath().normalize();
        try {
            if (Files.exists(target) && !isEmpty(target)) {
                throw new StoreException(Trouble.EXISTS, "There is something at " + folder
                        + " already. Name a folder that is new or empty.");
            }
            Files.createDirectories(target.getParent());
            // Not a temporary folder of Java's, which only its maker may read.
            return new NewFolder(target, Files.createDirectory(
                    target.resolveSibling("." + target.getFileName() + "-new-" + UUID.randomUUID())));
        } catch (IOException problem) {
            throw unwritable(folder, problem);
        }
    }

    Path work() {
        return work;
    }

    void publish() throws StoreException {
        try {
            if (Files.exists(target)) {
                Files.delete(target);
            }
            Files.move(work, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException problem) {
            throw unwritable(target, problem);
        }
    }

    @Override
    public void close() throws StoreException {
        if (!Files.exists(work)) {
            return;
        }
        try (Stream<Path> all = Files.walk(work)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException problem) {
            throw unwritable(work, problem);
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.findFirst().isEmpty();
        }
    }

    private static StoreException unwritable(Path folder, IOException problem) {
        return new StoreException(Trouble.UNWRITABLE, "The folder " + folder + " can't be written: "
                + problem.getMessage() + ". Check that its disk has room and that you may write there.", problem);
    }
}
