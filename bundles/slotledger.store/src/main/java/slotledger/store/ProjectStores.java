package slotledger.store;

import java.nio.file.Path;
import java.util.Map;
import slotledger.model.project.Author;
import slotledger.model.project.Journal;
import slotledger.model.project.Part;
import slotledger.model.project.PasswordPrompt;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.Watch;

/**
 * Where projects are kept: each in a folder of its own, packed into one file, or in a team's database to which a folder
 * leads.
 */
public interface ProjectStores {

    /** How the name of a packed project ends. */
    String PACKED = ".slotledger";

    /** Whether a folder holds a project, or a file is a packed one, by its name. */
    boolean isProject(Path place);

    /**
     * Makes a project, whole or not at all.
     *
     * @param folder made new; may exist if it is empty
     * @param files  what it begins with: path in the folder of plain files to file, by part; may be empty
     */
    void create(Path folder, String title, Map<Part, Map<String, Path>> files, Author author) throws StoreException;

    /** Opens a project or a packed one for reading. */
    ProjectSource read(Path place) throws StoreException;

    /** Opens a project for changes. */
    ProjectStore open(Path folder) throws StoreException;

    /**
     * Opens a project for changes whose journal was read before: where the seal of its last entry still stands, only
     * later entries are read, for a seal covers all entries before it. Of any other project all is read.
     */
    ProjectStore open(Path folder, Journal known) throws StoreException;

    /**
     * Packs a project with its whole journal and all originals into one file.
     *
     * @param force replaces an older packed file
     */
    void pack(Path folder, Path file, boolean force) throws StoreException;

    /**
     * Tells of every change to a project, by whomever, within two seconds.
     *
     * @param project not a packed one
     */
    Watch watch(Path project, ProjectListener listener) throws StoreException;

    /** The door to projects that a team keeps in one database. */
    SharedProjects shared();

    /** Says who is asked for the password of a team's database. */
    void askForPasswords(PasswordPrompt prompt);

    /** Makes a project of a packed one, whole or not at all. */
    void unpack(Path file, Path folder) throws StoreException;
}
