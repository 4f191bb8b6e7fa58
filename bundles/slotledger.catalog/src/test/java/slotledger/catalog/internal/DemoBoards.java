package slotledger.catalog.internal;

import java.nio.file.Files;
import java.nio.file.Path;

/** The boards of the demo fleet, in place. */
public final class DemoBoards {

    private DemoBoards() {
    }

    /** The folder, found above the working directory. */
    public static Path folder() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path boards = at.resolve("demo-fleet").resolve("boards");
            if (Files.isDirectory(boards)) {
                return boards;
            }
        }
        throw new IllegalStateException("The folder demo-fleet/boards must be in the project.");
    }
}
