package slotledger.serve.internal.pass;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.UUID;

/** Files that only their owner may read. */
public final class OwnersFile {

    private OwnersFile() {
    }

    /** A new file of a name of its own, to be moved to another beside it; elsewhere than on POSIX a plain file. */
    public static Path createBeside(Path file) throws IOException {
        Path part = file.resolveSibling("." + file.getFileName() + "-" + UUID.randomUUID());
        FileAttribute<?>[] owner = file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))}
                : new FileAttribute<?>[0];
        return Files.createFile(part, owner);
    }
}
