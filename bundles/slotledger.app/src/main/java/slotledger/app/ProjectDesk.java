package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import slotledger.model.difference.ProjectDifference;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.project.Entry;
import slotledger.model.project.Fact;
import slotledger.model.project.Journal;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.Watch;
import slotledger.model.task.Progress;

/**
 * Projects that are kept with their whole history: every change is an entry, and every file that was brought in stays
 * as it was. {@link FleetDesk#open} takes them like folders of plain files.
 */
public interface ProjectDesk {

    /** Whether a folder holds a project with a history, or a file is a packed one. */
    boolean isProject(Path place);

    /** The door to projects that a team keeps in one database. */
    TeamDesk team();

    /**
     * Tells of every change to a project, by whomever, within two seconds.
     *
     * @param project not a packed one
     */
    Watch watch(Path project, ProjectListener listener) throws DeskException;

    /**
     * Makes a project.
     *
     * @param from folder of plain files to begin with; empty where nothing is there yet
     */
    void create(Path folder, Optional<Path> from, Author author) throws DeskException;

    /**
     * Brings files in: each part that is among them is replaced as a whole.
     *
     * @param sources files named as in a folder of plain files, or such folders
     * @return empty where the project has exactly these files already
     */
    Optional<Entry> bringIn(Path project, List<Path> sources, Author author) throws DeskException;

    Journal history(Path project) throws DeskException;

    /**
     * What is different between a project after one entry and after another.
     *
     * @param after empty means the last entry
     */
    ProjectDifference compare(Path project, long before, OptionalLong after, Progress progress) throws DeskException;

    /**
     * Takes an entry back, by another entry.
     *
     * @param entry empty means the last change that holds
     */
    Entry undo(Path project, OptionalLong entry, Author author) throws DeskException;

    /**
     * Makes an entry hold again that was taken back.
     *
     * @param entry empty means the last one taken back, if nothing else was changed since
     */
    Entry redo(Path project, OptionalLong entry, Author author) throws DeskException;

    void pack(Path project, Path file, boolean force) throws DeskException;

    void unpack(Path file, Path folder) throws DeskException;

    /**
     * Writes the files of a project into a new folder of plain files, byte for byte as they were brought in.
     *
     * @param entry as they were after that entry; empty means now
     */
    List<Path> writeFiles(Path project, OptionalLong entry, Path folder, boolean force) throws DeskException;

    /** Writes a plan that was kept, byte for byte. */
    void writePlan(Path project, int number, Path file, boolean force) throws DeskException;

    /**
     * Reads a plan that was kept in the project a survey is of.
     *
     * @throws DeskException also where the survey is of plain files, or doesn't know one of the plan's boards
     */
    Plan keptPlan(Survey survey, int number) throws DeskException;

    /**
     * Keeps a plan that was just written for a survey.
     *
     * @return empty where the survey is of plain files or of a packed project, which keep nothing
     */
    Optional<Entry> keepPlan(Survey survey, Path planFile, Author author) throws DeskException;

    /** Says what is right where the inventory is wrong about a machine. */
    Entry correct(Survey survey, AssetTag machine, Fact fact, String value, Author author) throws DeskException;

    /**
     * Says what a machine must end with.
     *
     * @param slots label to content in the words of a choices file; none means that the machine stays as it is
     */
    Entry pin(Survey survey, AssetTag machine, Map<String, String> slots, Author author) throws DeskException;

    /**
     * Mutes what a check found, as long as it sees the same.
     *
     * @param machine empty means findings that are about no machine
     * @return one entry for each text that was seen
     */
    List<Entry> mute(Survey survey, String code, Optional<AssetTag> machine, Author author) throws DeskException;
}
