package slotledger.store;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * The database in which a team's projects are kept.
 *
 * @param url  of PostgreSQL's driver for Java, "jdbc:postgresql://host:5432/school?sslmode=verify-full"; without a
 *             password
 * @param user who connects; empty means PGUSER of the environment, or else the user of this computer
 */
public record TeamPlace(String url, Optional<String> user) {

    private static final String BEGINNING = "jdbc:postgresql:";

    public TeamPlace {
        url = url.strip();
        user = user.map(String::strip).filter(name -> !name.isEmpty());
        Objects.requireNonNull(user, "user");
        if (!url.startsWith(BEGINNING)) {
            // Not repeated here: what was typed may hold a password.
            throw new IllegalArgumentException("The address of a team's database must begin with \"" + BEGINNING
                    + "//\", such as jdbc:postgresql://db.example.org:5432/school.");
        }
        String address = url.replaceFirst("\\?.*", "");
        if (url.toLowerCase(Locale.ROOT).matches(".*[?&][a-z]*password=.*") || address.contains("@")) {
            throw new IllegalArgumentException("The address of a team's database must hold no password and no user. "
                    + "Passwords come from PostgreSQL's password file (.pgpass), from PGPASSWORD or a prompt.");
        }
    }

    /** "db.example.org:5432/school", for messages. */
    public String name() {
        return url.substring(BEGINNING.length()).replaceFirst("\\?.*", "").replaceFirst("^//", "");
    }
}
