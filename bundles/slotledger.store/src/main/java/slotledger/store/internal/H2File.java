package slotledger.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.h2.api.ErrorCode;
import org.h2.jdbcx.JdbcDataSource;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** The database of a project's folder: one file, which one program at a time has open. */
final class H2File {

    static final String NAME = "project.mv.db";

    private static final int BETWEEN_TRIES_MS = 50;
    /** Whoever opens a database in this program while another thread has it read-only would get it read-only, too. */
    private static final Map<Path, Object> LOCKS = new ConcurrentHashMap<>();

    private final Path folder;
    private final Schema schema;
    private final Duration patience;
    private final Object lock;

    /** @param patience how long to wait until another program lets go */
    H2File(Path folder, Schema schema, Duration patience) {
        this.folder = folder;
        this.schema = schema;
        this.patience = patience;
        this.lock = LOCKS.computeIfAbsent(folder.toAbsolutePath().normalize(), unknown -> new Object());
    }

    boolean isWritable() {
        return Files.isWritable(folder) && Files.isWritable(folder.resolve(NAME));
    }

    /** Makes the file and its tables. */
    Connection create() throws StoreException {
        try {
            JdbcDataSource source = source("");
            schema.migrate(source);
            return ready(source.getConnection());
        } catch (SQLException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The folder " + folder + " can't be written: "
                    + problem.getMessage() + " Check that its disk has room and that you may write there.", problem);
        }
    }

    /**
     * Looks whether the last entry that the mark names is there, without changing a byte: what was copied only in part
     * stays as it is, and H2 would make a new database of an empty file.
     */
    void mustHold(Mark mark) throws StoreException {
        mustBeThere();
        synchronized (lock) {
            lookAt(mark);
        }
    }

    private void lookAt(Mark mark) throws StoreException {
        try (Connection connection = connect(source(";IFEXISTS=TRUE;ACCESS_MODE_DATA=r"))) {
            SqlProject project = new SqlProject(connection, mark.id());
            if (project.seal(mark.entries()).filter(mark.seal()::equals).isEmpty()) {
                throw new StoreException(Trouble.DAMAGED, "The project " + folder + " had " + mark.entries()
                        + " entries, and " + project.last() + " that fit are found. Maybe it was copied only in part, "
                        + "or files of two copies were mixed: copy the whole folder again, or take your last backup.");
            }
        } catch (SQLException problem) {
            throw damaged(problem);
        }
    }

    private void mustBeThere() throws StoreException {
        if (!Files.isRegularFile(folder.resolve(NAME))) {
            throw new StoreException(Trouble.DAMAGED, "The project " + folder + " lacks its file " + NAME
                    + ". Maybe it was copied only in part: copy the whole folder again.");
        }
    }

    /** Opens the file, and brings tables of an earlier release to today's, of which a copy is kept. */
    Connection open() throws StoreException {
        JdbcDataSource source = source(isWritable() ? ";IFEXISTS=TRUE" : ";IFEXISTS=TRUE;ACCESS_MODE_DATA=r");
        Connection connection;
        synchronized (lock) {
            connection = connect(source);
        }
        try {
            int version = Schema.version(connection);
            if (version > schema.newest()) {
                throw new StoreException(Trouble.NEWER, "The project " + folder + " was written by a newer Slotledger "
                        + "(its form is " + version + ", this program knows up to " + schema.newest()
                        + "). Use that one.");
            }
            if (version < schema.newest()) {
                connection.close();
                upgrade(source, version);
                connection = connect(source);
            }
            return ready(connection);
        } catch (SQLException problem) {
            close(connection);
            throw damaged(problem);
        } catch (StoreException problem) {
            close(connection);
            throw problem;
        }
    }

    private void upgrade(JdbcDataSource source, int version) throws StoreException, SQLException {
        if (!isWritable()) {
            throw new StoreException(Trouble.UNWRITABLE, "The project " + folder + " was written by an earlier "
                    + "Slotledger and must be brought to today's form, but it can't be written. Copy it to where you "
                    + "may write, and open the copy.");
        }
        Path copy = folder.resolve("before-form-" + schema.newest() + ".mv.db");
        try {
            Files.copy(folder.resolve(NAME), copy, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The project " + folder + " has form " + version
                    + " of an earlier Slotledger. A copy must be kept before it is brought to today's form, but "
                    + copy.getFileName() + " can't be written: " + problem.getMessage() + ".", problem);
        }
        schema.migrate(source);
    }

    /** After a commit: returns when the bytes are on the disk. */
    static void settle(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("checkpoint sync");
        }
    }

    private Connection connect(JdbcDataSource source) throws StoreException {
        long end = System.nanoTime() + patience.toNanos();
        while (true) {
            try {
                return source.getConnection();
            } catch (SQLException problem) {
                if (problem.getErrorCode() != ErrorCode.DATABASE_ALREADY_OPEN_1) {
                    throw damaged(problem);
                }
                if (System.nanoTime() - end > 0) {
                    throw new StoreException(Trouble.IN_USE, "The project " + folder + " is open in another program, "
                            + "and still was after " + patience.toSeconds() + " seconds. Close it there, or wait until "
                            + "it has finished. Nothing was changed.", problem);
                }
                pause();
            }
        }
    }

    private static Connection ready(Connection connection) throws SQLException {
        connection.setAutoCommit(false);
        return connection;
    }

    private static void pause() {
        try {
            Thread.sleep(BETWEEN_TRIES_MS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException alsoBroken) {
            // What is thrown already says more.
        }
    }

    private StoreException damaged(SQLException problem) {
        return new StoreException(Trouble.DAMAGED, "The file " + folder.resolve(NAME) + " can't be opened: "
                + problem.getMessage() + " Maybe it was copied only in part, or while a program had it open: copy the "
                + "whole folder again, or take your last backup.", problem);
    }

    private JdbcDataSource source(String more) throws StoreException {
        String path = folder.toAbsolutePath().normalize().resolve("project").toString();
        if (path.contains(";")) {
            throw new StoreException(Trouble.REFUSED, "A project can't be kept in " + folder
                    + ": the name of a folder above it holds a semicolon. Use another place.");
        }
        JdbcDataSource source = new JdbcDataSource();
        source.setURL("jdbc:h2:file:" + path + ";WRITE_DELAY=0;DB_CLOSE_ON_EXIT=FALSE;TRACE_LEVEL_FILE=0" + more);
        source.setUser("slotledger");
        source.setPassword("");
        return source;
    }
}
