package slotledger.store.internal;

import java.time.Clock;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import slotledger.model.project.TeamRole;
import slotledger.store.StoreException;
import slotledger.store.TeamPlace;
import slotledger.testkit.PostgresServer;

/** A database of a team, with a person of each role. */
final class Team implements AutoCloseable {

    static final Duration PATIENCE = Duration.ofSeconds(20);

    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final Map<String, String> WITH_PASSWORD = Map.of("PGPASSWORD", PostgresServer.PASSWORD);

    private final PostgresServer server = PostgresServer.running();
    private final String database = "school" + COUNT.incrementAndGet();
    private final TeamDatabases databases = new TeamDatabases(WITH_PASSWORD::get, PATIENCE);

    Team() throws StoreException {
        server.sql("postgres", PostgresServer.ADMIN, "create database " + database);
        stores(Clock.systemUTC()).shared().prepare(place(PostgresServer.ADMIN));
        for (TeamRole role : TeamRole.values()) {
            String user = user(role);
            if (admin("select count(*) from pg_roles where rolname = '" + user + "'").equals("0")) {
                admin("create role " + user + " login password '" + PostgresServer.PASSWORD + "'");
                admin("grant " + TeamSchema.role(role) + " to " + user);
            }
        }
    }

    static String user(TeamRole role) {
        return switch (role) {
            case COORDINATOR -> "anna";
            case PROCUREMENT -> "paula";
            case TECHNICIAN -> "tim";
            case READER -> "rita";
        };
    }

    PostgresServer server() {
        return server;
    }

    String admin(String sql) {
        return server.sql(database, PostgresServer.ADMIN, sql);
    }

    String sql(TeamRole role, String sql) {
        return server.sql(database, user(role), sql);
    }

    TeamPlace place(TeamRole role) {
        return place(user(role));
    }

    TeamPlace place(String user) {
        return new TeamPlace(server.url(database), Optional.of(user));
    }

    /** The stores of one program. */
    DefaultProjectStores stores(Clock clock) {
        return new DefaultProjectStores(clock, Schema.today(), PATIENCE, databases);
    }

    /** The stores of another program, with connections of its own. */
    static DefaultProjectStores otherProgram() {
        return new DefaultProjectStores(Fixture.NOON, Schema.today(), PATIENCE,
                new TeamDatabases(WITH_PASSWORD::get, PATIENCE));
    }

    @Override
    public void close() {
        databases.close();
    }
}
