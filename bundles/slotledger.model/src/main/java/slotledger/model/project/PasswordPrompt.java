package slotledger.model.project;

import java.util.Optional;

/** Asks a person for a password, where neither the environment nor the password file has it. */
@FunctionalInterface
public interface PasswordPrompt {

    /** Nobody can be asked. */
    PasswordPrompt NOBODY = (user, database) -> Optional.empty();

    /**
     * The password, which is kept in memory only.
     *
     * @param user     of the database
     * @param database host, port and name, for the person to read
     * @return empty where nobody answers
     */
    Optional<char[]> ask(String user, String database);
}
