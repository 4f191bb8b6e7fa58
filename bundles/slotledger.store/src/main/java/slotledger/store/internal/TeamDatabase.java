package slotledger.store.internal;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import java.util.Set;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** One team's database: its connections, and the patience with it when it is away. */
final class TeamDatabase implements AutoCloseable {

    static final String SCHEMA = "slotledger";

    private static final int SECOND_MS = 1_000;
    private static final int CONNECT_SECONDS = 5;
    private static final int ANSWER_SECONDS = 30;
    private static final int CONNECTIONS = 4;
    private static final int FIRST_PAUSE_MS = 100;
    /** PostgreSQL 15, appendix A: shut down by its administrator, crashed, starting up; too many connections. */
    private static final Set<String> PASSING = Set.of("57P01", "57P02", "57P03", "53300");
    /** Refused because of who asks: neither time nor another try helps. */
    private static final String REJECTED = "08004";

    private final String name;
    private final String user;
    private final DataSource single;
    private final HikariDataSource pool;
    private final Duration patience;

    private TeamDatabase(String name, String user, DataSource single, HikariDataSource pool, Duration patience) {
        this.name = name;
        this.user = user;
        this.single = single;
        this.pool = pool;
        this.patience = patience;
    }

    /** What is done with a connection that commits by itself only when told. */
    @FunctionalInterface
    interface Work<T> {
        T with(Connection connection) throws SQLException, IOException, StoreException;
    }

    /** @param password null where none is needed or the driver finds it in the password file */
    static PGSimpleDataSource source(String url, String user, String password) {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setConnectTimeout(CONNECT_SECONDS);
        source.setSocketTimeout(ANSWER_SECONDS);
        source.setTcpKeepAlive(true);
        source.setApplicationName("Slotledger");
        source.setCurrentSchema(SCHEMA);
        // After the settings above, which whoever wrote the address may want otherwise.
        source.setURL(url);
        source.setUser(user);
        source.setPassword(password);
        return source;
    }

    static TeamDatabase over(String name, PGSimpleDataSource source, Duration patience) {
        HikariConfig config = new HikariConfig();
        config.setPoolName("team database " + name);
        config.setDataSource(source);
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(0);
        config.setConnectionTimeout(CONNECT_SECONDS * SECOND_MS);
        config.setValidationTimeout(2 * SECOND_MS);
        config.setInitializationFailTimeout(-1);
        config.setAutoCommit(false);
        return new TeamDatabase(name, source.getUser(), source, new HikariDataSource(config), patience);
    }

    String name() {
        return name;
    }

    String user() {
        return user;
    }

    /** For Flyway, and for listening, which keeps a connection to itself. */
    DataSource single() {
        return single;
    }

    /**
     * Does a piece of work, and does it again from its beginning where the connection was lost. It must be such that a
     * second time does no harm when the first one was committed and only the answer lost.
     *
     * @param what  "The project can't be read", for messages
     * @param after what to know and to do where it stays away
     */
    <T> T riding(String what, String after, Work<T> work) throws StoreException {
        long end = System.nanoTime() + patience.toNanos();
        for (long pause = FIRST_PAUSE_MS;; pause = Math.min(2 * pause, SECOND_MS)) {
            try (Connection connection = pool.getConnection()) {
                try {
                    T result = work.with(connection);
                    connection.commit();
                    return result;
                } catch (SQLException | IOException | StoreException | RuntimeException problem) {
                    rollBack(connection);
                    throw problem;
                }
            } catch (SQLException problem) {
                if (!passes(problem)) {
                    throw TeamTrouble.said(name, user, what, problem);
                }
                if (System.nanoTime() - end > 0) {
                    throw new StoreException(Trouble.AWAY, what + ": the database " + name + " doesn't answer, and "
                            + "still did not after " + patience.toSeconds() + " seconds (" + TeamTrouble.reason(problem)
                            + "). " + after, problem);
                }
                pause(pause);
            } catch (IOException problem) {
                throw new StoreException(Trouble.UNWRITABLE, what + ": " + problem.getMessage() + ".", problem);
            }
        }
    }

    /** Whether waiting may help. */
    static boolean passes(SQLException problem) {
        String state = problem.getSQLState();
        if (state == null) {
            return problem instanceof SQLTransientConnectionException;
        }
        return state.startsWith("08") && !state.equals(REJECTED) || PASSING.contains(state);
    }

    private static void rollBack(Connection connection) {
        try {
            connection.rollback();
        } catch (SQLException gone) {
            // Without a connection nothing is committed either.
        }
    }

    private static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        pool.close();
    }
}
