package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.plan.Plan;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.PlanVersion;
import slotledger.model.project.ProjectState;
import slotledger.store.ProjectSource;
import slotledger.store.StoreException;

/** Takes out what a project keeps. */
final class StoredFiles {

    private StoredFiles() {
    }

    /** Writes the files of all parts below a folder; returns them. */
    static List<Path> write(ProjectSource source, ProjectState state, Path folder) throws StoreException {
        List<Path> made = new ArrayList<>();
        for (Original original : state.files()) {
            made.add(folder.resolve(original.name()));
            source.write(original, folder.resolve(original.name()));
        }
        return made;
    }

    /** Reads a plan that was kept. */
    static Plan plan(ProjectSource source, PlanVersion version, SingleFiles single)
            throws StoreException, DeskException {
        Path file = RunFolder.make().resolve("plan.json");
        source.write(version.plan().file(), file);
        Plan plan = single.plan(file);
        try {
            Files.delete(file);
        } catch (IOException stillRead) {
            // The folder is swept when the program ends.
        }
        return plan;
    }

    /** The kept plan of a number. */
    static PlanVersion version(ProjectState state, int number, Path project) throws DeskException {
        return state.plan(number).orElseThrow(() -> new DeskException(Trouble.INPUT, "The project " + project
                + " has no plan " + number + "; it has " + state.plans().stream().map(PlanVersion::number).toList()
                + "."));
    }

    /** @throws DeskException where the journal has no entry of that number */
    static void mustHave(Journal journal, long entry, Path project) throws DeskException {
        if (entry < 1 || entry > journal.last().number()) {
            throw new DeskException(Trouble.INPUT, "The project " + project + " has entries 1 to "
                    + journal.last().number() + ", and none of number " + entry + ".");
        }
    }
}
