package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;

/** One file that a user names. */
final class OutputFile {

    private OutputFile() {
    }

    static void mayWrite(Path file, boolean force) throws DeskException {
        if (Files.isDirectory(file)) {
            throw new DeskException(Trouble.EXISTS, file + " is a folder, but a file name is needed.");
        }
        if (Files.exists(file) && !force) {
            throw new DeskException(Trouble.EXISTS,
                    "The file " + file + " exists already. Choose another name, or say --force to replace it.");
        }
    }

    /** Moves what was written beside a file to its name. */
    static void publish(Path beside, Path file) throws DeskException {
        try {
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, "The file " + file + " can't be written: " + problem.getMessage()
                    + ". Check that its disk has room and that you may write there.", problem);
        }
    }
}
