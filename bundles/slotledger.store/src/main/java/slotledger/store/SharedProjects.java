package slotledger.store;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import slotledger.model.project.Author;
import slotledger.model.project.Part;
import slotledger.model.project.TeamRole;

/**
 * Projects that a team keeps in one PostgreSQL database. What is made here is a folder with a small text file that
 * names database and project; {@link ProjectStores} takes it like any other project.
 */
public interface SharedProjects {

    /** One of the projects of a database. */
    record Listed(UUID id, String title, long entries) {
    }

    /**
     * Makes tables, roles and rights in a database, or brings those of an earlier release to today's. Its user must own
     * the database and may make roles.
     */
    void prepare(TeamPlace place) throws StoreException;

    /**
     * Makes a project in a database, and the folder that leads to it, whole or not at all.
     *
     * @param files as in {@link ProjectStores#create}
     */
    void create(TeamPlace place, Path folder, String title, Map<Part, Map<String, Path>> files, Author author)
            throws StoreException;

    /**
     * Brings a project with its whole history into a database, and makes the folder that leads to it there.
     *
     * @param project in a folder of its own, or packed; it stays as it is
     */
    void share(TeamPlace place, Path folder, Path project) throws StoreException;

    /** The projects of a database, in the order of their titles. */
    List<Listed> list(TeamPlace place) throws StoreException;

    /**
     * Makes a folder that leads to a project of a database.
     *
     * @param project empty where there is only one
     */
    void join(TeamPlace place, Path folder, Optional<UUID> project) throws StoreException;

    /**
     * Gives a user of the database exactly one role in all its projects; makes the user, without a password, where
     * there is none.
     *
     * @return whether the user was made
     */
    boolean admit(Path project, String user, TeamRole role) throws StoreException;
}
