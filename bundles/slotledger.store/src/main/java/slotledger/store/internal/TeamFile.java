package slotledger.store.internal;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.UUID;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;
import slotledger.store.TeamPlace;

/** The small file in a folder that leads to a project in a team's database. */
record TeamFile(TeamPlace place, UUID project) {

    static final String NAME = "team.properties";

    private static final Set<String> KEYS = Set.of("url", "user", "project");

    static boolean isIn(Path folder) {
        return Files.exists(folder.resolve(NAME));
    }

    static TeamFile read(Path folder) throws StoreException {
        Path file = folder.resolve(NAME);
        if (!isIn(folder)) {
            throw new StoreException(Trouble.MISSING, "The folder " + folder + " leads to no team's project: it holds "
                    + "no " + NAME + ". \"project team join\" makes one that does.");
        }
        Properties properties = new Properties();
        try (Reader text = Files.newBufferedReader(file)) {
            properties.load(text);
        } catch (IOException | IllegalArgumentException problem) {
            throw new StoreException(Trouble.DAMAGED, "The file " + file + " can't be read: " + problem.getMessage()
                    + ". Maybe it was copied only in part: \"project team join\" makes it again.", problem);
        }
        for (String key : properties.stringPropertyNames()) {
            if (!KEYS.contains(key)) {
                throw wrong(file, "it must hold url, user and project, and holds \"" + key + "\", too. Passwords do "
                        + "not belong here.");
            }
        }
        try {
            return new TeamFile(new TeamPlace(properties.getProperty("url", ""),
                    Optional.ofNullable(properties.getProperty("user"))),
                    UUID.fromString(properties.getProperty("project", "").strip()));
        } catch (IllegalArgumentException problem) {
            throw wrong(file, problem.getMessage());
        }
    }

    private static StoreException wrong(Path file, String what) {
        return new StoreException(Trouble.DAMAGED, "The file " + file + " doesn't lead to a team's project: " + what
                + " \"project team join\" makes it anew in another folder.");
    }

    /** Writes it into a folder that nobody sees yet. */
    void write(Path folder) throws StoreException {
        String text = """
                # Leads to a project that a team keeps in one PostgreSQL database.
                # Holds no password: that is in PostgreSQL's password file (.pgpass), in PGPASSWORD, or asked for.
                url=%s
                %sproject=%s
                """.formatted(escaped(place.url()), place.user().map(name -> "user=" + escaped(name) + "\n").orElse(""),
                project);
        try {
            Files.writeString(folder.resolve(NAME), text, StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The folder " + folder + " can't be written: "
                    + problem.getMessage() + ". Check that its disk has room and that you may write there.", problem);
        }
    }

    private static String escaped(String value) {
        return value.replace("\\", "\\\\");
    }
}
