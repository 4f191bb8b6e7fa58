package slotledger.store.internal;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import javax.sql.DataSource;
import org.postgresql.PGConnection;

/**
 * Sees a project in a team's database: woken by what the database sends with each entry, and by the clock, because not
 * every way to a database lets such messages through.
 */
final class TeamEye implements Watching.Eye {

    private static final int LONGEST_WAIT_MS = 1_000;

    private final DataSource source;
    private final UUID project;
    private Connection connection;

    TeamEye(DataSource source, UUID project) {
        this.source = source;
        this.project = project;
    }

    @Override
    public long look() throws SQLException {
        try {
            if (connection == null) {
                connection = source.getConnection();
                try (Statement listen = connection.createStatement()) {
                    listen.execute("listen slotledger");
                }
            } else {
                connection.unwrap(PGConnection.class).getNotifications(LONGEST_WAIT_MS);
            }
            return new SqlProject(connection, project).last();
        } catch (SQLException problem) {
            close();
            throw problem;
        }
    }

    @Override
    public void close() {
        if (connection != null) {
            try {
                connection.close();
            } catch (SQLException gone) {
                // It is gone anyway.
            }
            connection = null;
        }
    }
}
