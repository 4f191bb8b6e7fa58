package slotledger.store.internal;

import java.sql.SQLException;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.postgresql.ds.PGSimpleDataSource;
import slotledger.model.project.PasswordPrompt;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;
import slotledger.store.TeamPlace;

/** The teams' databases that are open in this program. */
final class TeamDatabases implements AutoCloseable {

    private static final int BETWEEN_TRIES_MS = 200;

    private final UnaryOperator<String> environment;
    private final Duration patience;
    private final Map<TeamPlace, TeamDatabase> open = new HashMap<>();
    private PasswordPrompt prompt = PasswordPrompt.NOBODY;

    /**
     * @param environment value of a variable, or null
     * @param patience    how long a database may be away
     */
    TeamDatabases(UnaryOperator<String> environment, Duration patience) {
        this.environment = environment;
        this.patience = patience;
    }

    synchronized void askForPasswords(PasswordPrompt other) {
        prompt = other;
    }

    /** The database, which answered when it was opened first. */
    synchronized TeamDatabase at(TeamPlace place) throws StoreException {
        TeamDatabase database = open.get(place);
        if (database == null) {
            database = connect(place);
            open.put(place, database);
        }
        return database;
    }

    private TeamDatabase connect(TeamPlace place) throws StoreException {
        String user = place.user().or(() -> Optional.ofNullable(environment.apply("PGUSER")))
                .orElse(System.getProperty("user.name"));
        PGSimpleDataSource source = source(place, user, environment.apply("PGPASSWORD"));
        try {
            trying(source);
        } catch (SQLException problem) {
            if (!wantsPassword(problem)) {
                throw refused(place, user, problem);
            }
            char[] password = prompt.ask(user, place.name()).orElseThrow(() -> refused(place, user, problem));
            source = source(place, user, String.valueOf(password));
            Arrays.fill(password, ' ');
            try {
                trying(source);
            } catch (SQLException again) {
                throw refused(place, user, again);
            }
        }
        return TeamDatabase.over(place.name(), source, patience);
    }

    private static PGSimpleDataSource source(TeamPlace place, String user, String password) throws StoreException {
        try {
            return TeamDatabase.source(place.url(), user, password);
        } catch (IllegalArgumentException problem) {
            throw new StoreException(Trouble.REFUSED, "The address of the team's database can't be understood. It looks"
                    + " like jdbc:postgresql://db.example.org:5432/school.", problem);
        }
    }

    /** A server that is just starting gets time; a wrong name or password is said at once. */
    private void trying(PGSimpleDataSource source) throws SQLException {
        long end = System.nanoTime() + patience.toNanos() / 3;
        while (true) {
            try {
                source.getConnection().close();
                return;
            } catch (SQLException problem) {
                if (!TeamDatabase.passes(problem) || System.nanoTime() - end > 0) {
                    throw problem;
                }
                pause();
            }
        }
    }

    private static boolean wantsPassword(SQLException problem) {
        return "28P01".equals(problem.getSQLState()) || "08004".equals(problem.getSQLState());
    }

    private static StoreException refused(TeamPlace place, String user, SQLException problem) {
        if (TeamDatabase.passes(problem)) {
            return new StoreException(Trouble.AWAY, "The database " + place.name() + " can't be reached ("
                    + TeamTrouble.reason(problem) + "). Check the address and the network, or ask whoever runs it. "
                    + "Nothing was changed.", problem);
        }
        return TeamTrouble.said(place.name(), user, "The team's projects can't be opened", problem);
    }

    private static void pause() {
        try {
            Thread.sleep(BETWEEN_TRIES_MS);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public synchronized void close() {
        open.values().forEach(TeamDatabase::close);
        open.clear();
    }
}
