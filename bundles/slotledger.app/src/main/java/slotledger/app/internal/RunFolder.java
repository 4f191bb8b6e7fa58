package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;

/** A folder for files that are only needed until the program ends. */
final class RunFolder {

    private RunFolder() {
    }

    static Path make() throws DeskException {
        try {
            Path folder = Files.createTempDirectory("slotledger-");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> sweep(folder), "slotledger sweep"));
            return folder;
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, "The folder for temporary files can't be written: "
                    + problem.getMessage() + ". Check that its disk has room.", problem);
        }
    }

    private static void sweep(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException stillRead) {
            // What stays lies where the system clears up by itself.
        }
    }
}
