package slotledger.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import slotledger.model.project.Author;
import slotledger.model.project.PasswordPrompt;
import slotledger.model.project.TeamRole;

/**
 * Projects that a team keeps in one PostgreSQL database. What is made here is a folder that leads to such a project;
 * every step that takes a project takes it. An address is that of PostgreSQL's driver for Java, without a password; an
 * empty user means PGUSER of the environment, or else the user of this computer.
 */
public interface TeamDesk {

    /** Makes tables, roles and rights in a database, or brings those of an earlier release to today's. */
    void prepare(String url, Optional<String> user) throws DeskException;

    /**
     * Makes a project in a database, and the folder that leads to it.
     *
     * @param from folder of plain files to begin with, or a project, packed or not, that is brought in with its whole
     *             history; empty where nothing is there yet
     */
    void create(String url, Optional<String> user, Path folder, Optional<Path> from, Author author)
            throws DeskException;

    /**
     * Makes a folder that leads to a project of a database.
     *
     * @param project empty where there is only one
     */
    void join(String url, Optional<String> user, Path folder, Optional<UUID> project) throws DeskException;

    /**
     * Gives a user of the database exactly one role in all its projects.
     *
     * @return whether the user was made, without a password
     */
    boolean admit(Path project, String user, TeamRole role) throws DeskException;

    /** Says who is asked for passwords that neither the environment nor PostgreSQL's password file has. */
    void askForPasswords(PasswordPrompt prompt);
}
