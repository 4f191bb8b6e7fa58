package slotledger.app;

import java.nio.file.Path;
import java.util.Objects;
import slotledger.model.project.ProjectState;

/**
 * Where a project's files come from when it is kept with its whole history.
 *
 * @param home  folder of the project, or packed file
 * @param state what held when the files were taken out
 */
public record Stored(Path home, ProjectState state) {

    public Stored {
        Objects.requireNonNull(home, "home");
        Objects.requireNonNull(state, "state");
    }
}
