package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import slotledger.firmware.FirmwareReading;
import slotledger.model.observed.Reconciliation;
import slotledger.model.task.Progress;

/** The door to what machines say of themselves. */
public interface FirmwareDesk {

    /**
     * Reads firmware tables, SPD images, and lists of them, from files, folders and ZIP archives; needs no project.
     *
     * @throws DeskException where a file is missing; what can't be understood is among the readings
     */
    List<FirmwareReading> read(List<Path> paths) throws DeskException;

    /**
     * Drafts a board file for each model of which a project has firmware and no document, and writes them for a person
     * to check.
     *
     * @param folder for the drafts; inside the project's folder of boards they are read from then on, and give way to
     *               documents
     * @param force  replaces the drafts of an earlier run
     */
    DraftedBoards draftBoards(Project project, Path folder, boolean force, Progress progress) throws DeskException;

    /** What each source of a project says of each machine, fact by fact. */
    Reconciled reconcile(Project project, Progress progress) throws DeskException;

    /** Writes what was compared as text with commas (RFC 4180), one fact a row. */
    void writeReconciliation(Reconciliation reconciliation, Path file, boolean force) throws DeskException;

    /**
     * Writes the scripts that collect firmware tables, and the page that says what they take; returns what was written.
     *
     * @param force replaces the kit of an earlier run
     */
    List<Path> writeKit(Path folder, boolean force) throws DeskException;
}
