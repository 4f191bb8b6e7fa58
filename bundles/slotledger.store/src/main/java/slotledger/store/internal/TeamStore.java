package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/**
 * A project in a team's database. No connection is held between two calls, and an entry goes in with all that was kept
 * for it in one transaction, so that a lost connection only means to do that again.
 */
final class TeamStore extends SqlStore {

    private final TeamDatabase database;
    private final Map<String, Path> kept = new HashMap<>();

    private TeamStore(String where, UUID id, Journal journal, Clock clock, Set<String> own,
            TeamDatabase database) {
        super(where, id, journal, clock, own);
        this.database = database;
    }

    /** @param known what was read of its journal before */
    static TeamStore open(Path folder, TeamFile file, TeamDatabase database, Clock clock, Set<String> own,
            Optional<Journal> known) throws StoreException {
        String where = folder.toString();
        Journal journal = database.riding("The project " + where + " can't be read", "Try again later.", connection -> {
            TeamSchema.mustBeToday(connection, database);
            SqlProject project = new SqlProject(connection, file.project());
            if (project.seal(1).isEmpty()) {
                throw new StoreException(Trouble.MISSING, "The database " + database.name() + " holds no project of the"
                        + " id " + file.project() + ", which " + folder.resolve(TeamFile.NAME) + " names. \"project "
                        + "team join\" shows what there is.");
            }
            return Entries.read(known, project::entriesAfter, where);
        });
        return new TeamStore(where, file.project(), journal, clock, own, database);
    }

    @Override
    public Original keep(String name, Path file) throws StoreException {
        Original original = identify(name, file);
        kept.put(original.sha256(), file);
        return original;
    }

    /**
     * The entry's seal is its identity: it covers who, when, what and all before it. Where the answer to a commit was
     * lost, the row of that number tells whether it was ours; and as long as nobody else has the number, ours can only
     * be written once.
     */
    @Override
    boolean add(EntryRow row, List<Original> originals) throws StoreException {
        return database.riding("Entry " + row.number() + " of the project " + where() + " can't be written",
                "Nothing you have on the screen or in files is lost. When it is back, look at the history whether the "
                        + "entry is there; if not, do it again.",
                connection -> {
                    SqlProject project = new SqlProject(connection, id());
                    Optional<String> there = project.seal(row.number());
                    if (there.isPresent()) {
                        return there.get().equals(row.seal());
                    }
                    for (Original original : originals) {
                        send(project, connection, original);
                    }
                    try {
                        project.add(row);
                        connection.commit();
                        return true;
                    } catch (SQLException problem) {
                        if (!UNIQUE_VIOLATION.equals(problem.getSQLState())) {
                            throw problem;
                        }
                        connection.rollback();
                        return project.seal(row.number()).filter(row.seal()::equals).isPresent();
                    }
                });
    }

    private void send(SqlProject project, Connection connection, Original original)
            throws SQLException, IOException {
        if (project.holds(original)) {
            return;
        }
        Path file = kept.get(original.sha256());
        if (file == null) {
            throw new IllegalArgumentException("The original (%s) must be kept first.".formatted(original));
        }
        Savepoint before = connection.setSavepoint();
        try (InputStream bytes = Files.newInputStream(file)) {
            project.keep(original, bytes);
        } catch (SQLException problem) {
            // Somebody else brought the same file in at the same time.
            if (!UNIQUE_VIOLATION.equals(problem.getSQLState())) {
                throw problem;
            }
            connection.rollback(before);
        }
    }

    @Override
    List<EntryRow> rowsAfter(long number) throws StoreException {
        return reading(connection -> new SqlProject(connection, id()).entriesAfter(number));
    }

    @Override
    public List<EntryRow> rows() throws StoreException {
        return rowsAfter(0);
    }

    @Override
    public void copy(Original original, OutputStream target) throws StoreException, IOException {
        // To a file first: where the connection is lost midway, the target must not get the beginning twice.
        Path whole = Files.createTempFile("slotledger-original", null);
        try {
            boolean right = reading(connection -> {
                try (OutputStream file = Files.newOutputStream(whole)) {
                    return new SqlProject(connection, id()).copy(original, file);
                }
            });
            if (!right) {
                throw spoilt(original);
            }
            Files.copy(whole, target);
        } finally {
            Files.deleteIfExists(whole);
        }
    }

    private <T> T reading(TeamDatabase.Work<T> work) throws StoreException {
        return database.riding("The project " + where() + " can't be read", "Try again later.", work);
    }

    @Override
    void mustBeWritable() {
        // The database itself knows who may.
    }

    @Override
    public void close() {
        kept.clear();
    }
}
