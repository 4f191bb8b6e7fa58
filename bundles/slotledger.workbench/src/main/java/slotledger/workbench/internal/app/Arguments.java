package slotledger.workbench.internal.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the workbench was started with.
 *
 * @param project folder to open at once
 * @param unknown the first argument that means nothing
 */
record Arguments(Optional<Path> project, Optional<String> unknown) {

    /** The start program puts this before each of the user's arguments, see slotledger.start. */
    private static final String MARK = "=";

    private static final String PROJECT = "-project";

    Arguments {
        Objects.requireNonNull(project, "project");
        Objects.requireNonNull(unknown, "unknown");
    }

    /** Arguments without the mark are the framework's own. */
    static Arguments of(String[] passed) {
        List<String> ours = new ArrayList<>();
        for (String argument : passed) {
            if (argument.startsWith(MARK)) {
                ours.add(argument.substring(MARK.length()));
            }
        }
        if (ours.size() >= 2 && ours.get(0).equals(PROJECT)) {
            return new Arguments(Optional.of(Path.of(ours.get(1))), ours.stream().skip(2).findFirst());
        }
        return new Arguments(Optional.empty(), ours.stream().findFirst());
    }
}
