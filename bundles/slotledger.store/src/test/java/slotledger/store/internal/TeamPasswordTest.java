package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.model.project.TeamRole;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;
import slotledger.store.TeamPlace;
import slotledger.testkit.PostgresServer;

/** Where passwords come from, and where they never go. */
class TeamPasswordTest {

    private static final String FILE_SETTING = "org.postgresql.pgpassfile";

    private static Team team;

    @TempDir
    Path top;

    @BeforeAll
    static void makeADatabase() throws Exception {
        team = new Team();
    }

    @AfterAll
    static void close() {
        if (team != null) {
            team.close();
        }
    }

    @Test
    void thePasswordFileIsAsked() throws Exception {
        Path file = Files.writeString(top.resolve("pgpass"), "*:*:*:anna:" + PostgresServer.PASSWORD + "\n");
        System.setProperty(FILE_SETTING, file.toString());
        try (TeamDatabases databases = databases(Map.of())) {
            assertEquals(List.of(), stores(databases).shared().list(team.place(TeamRole.COORDINATOR)));
        } finally {
            System.clearProperty(FILE_SETTING);
        }
    }

    @Test
    void aPersonIsAskedWhereNothingElseHasIt() throws Exception {
        List<String> asked = new ArrayList<>();
        try (TeamDatabases databases = databases(Map.of("PGUSER", "rita"))) {
            DefaultProjectStores stores = stores(databases);
            stores.askForPasswords((user, database) -> {
                asked.add(user + " at " + database);
                return Optional.of(PostgresServer.PASSWORD.toCharArray());
            });
            TeamPlace place = new TeamPlace(team.place("x").url(), Optional.empty());
            stores.shared().list(place);
            stores.shared().list(place);
            assertEquals(List.of("rita at " + place.name()), asked);
        }
    }

    @Test
    void aWrongPasswordIsSaidAndNotRepeated() {
        try (TeamDatabases databases = databases(Map.of("PGPASSWORD", "hunter22"))) {
            StoreException said = assertThrows(StoreException.class,
                    () -> stores(databases).shared().list(team.place(TeamRole.READER)));
            assertEquals(Trouble.DENIED, said.trouble());
            assertTrue(said.getMessage().contains("doesn't let rita in"), said.getMessage());
            StringWriter all = new StringWriter();
            said.printStackTrace(new PrintWriter(all));
            assertFalse(all.toString().contains("hunter22"), all.toString());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"jdbc:postgresql://db/school?password=hunter22", "postgresql://ben:hunter22@db/school",
        "jdbc:postgresql://ben:hunter22@db/school", "jdbc:postgresql://db/school?a=b&sslpassword=hunter22"})
    void anAddressWithAPasswordIsRefusedWithoutRepeatingIt(String url) throws Exception {
        IllegalArgumentException said =
                assertThrows(IllegalArgumentException.class, () -> new TeamPlace(url, Optional.empty()));
        assertFalse(said.getMessage().contains("hunter22"), said.getMessage());
        Files.writeString(top.resolve(TeamFile.NAME), "url=" + url + "\nproject=x\n");
        StoreException read = assertThrows(StoreException.class, () -> TeamFile.read(top));
        assertFalse(read.getMessage().contains("hunter22"), read.getMessage());
    }

    @Test
    void aPasswordInTheFileThatLeadsToAProjectIsRefused() throws Exception {
        Files.writeString(top.resolve(TeamFile.NAME), "url=jdbc:postgresql://db/school\npassword=hunter22\n");
        StoreException said = assertThrows(StoreException.class, () -> TeamFile.read(top));
        assertTrue(said.getMessage().contains("Passwords do not belong here"), said.getMessage());
        assertFalse(said.getMessage().contains("hunter22"), said.getMessage());
    }

    @Test
    void whatTheAddressSaysOfEncryptionHolds() {
        String url = team.place(TeamRole.READER).url() + "?sslmode=require";
        try (TeamDatabases databases = databases(Map.of("PGPASSWORD", PostgresServer.PASSWORD))) {
            StoreException said = assertThrows(StoreException.class,
                    () -> stores(databases).shared().list(new TeamPlace(url, Optional.of("rita"))));
            assertTrue(said.getMessage().contains("SSL"), said.getMessage());
        }
    }

    @Test
    void aDatabaseThatIsNotPreparedIsNamed() {
        team.server().sql("postgres", PostgresServer.ADMIN, "create database empty");
        try (TeamDatabases databases = databases(Map.of("PGPASSWORD", PostgresServer.PASSWORD))) {
            StoreException said = assertThrows(StoreException.class, () -> stores(databases).shared()
                    .list(new TeamPlace(team.server().url("empty"), Optional.of("anna"))));
            assertTrue(said.getMessage().contains("\"project team prepare\""), said.getMessage());
            StoreException denied = assertThrows(StoreException.class, () -> stores(databases).shared()
                    .prepare(new TeamPlace(team.server().url("empty"), Optional.of("anna"))));
            assertTrue(denied.getMessage().contains("must own the database"), denied.getMessage());
        }
    }

    @Test
    void aDatabaseThatIsNotThereAndAServerThatIsNotThereAreTold() {
        try (TeamDatabases databases = databases(Map.of("PGPASSWORD", PostgresServer.PASSWORD))) {
            StoreException database = assertThrows(StoreException.class, () -> stores(databases).shared()
                    .list(new TeamPlace(team.server().url("nowhere"), Optional.of("anna"))));
            assertTrue(database.getMessage().contains("there is no database"), database.getMessage());
            StoreException server = assertThrows(StoreException.class, () -> stores(databases).shared()
                    .list(new TeamPlace("jdbc:postgresql://localhost:1/school", Optional.of("anna"))));
            assertEquals(Trouble.AWAY, server.trouble());
        }
    }

    private static TeamDatabases databases(Map<String, String> environment) {
        return new TeamDatabases(environment::get, Duration.ofSeconds(2));
    }

    private static DefaultProjectStores stores(TeamDatabases databases) {
        return new DefaultProjectStores(Clock.systemUTC(), Schema.today(), Duration.ofSeconds(1), databases);
    }
}
