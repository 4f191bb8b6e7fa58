package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.TeamRole;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** What each role may do, asked of the database itself, past the program. */
class TeamRightsTest {

    private static final Author PAULA = new Author("paula", "");

    private static Team team;
    private static DefaultProjectStores stores;

    @TempDir
    Path top;

    private UUID id;

    @BeforeAll
    static void makeADatabase() throws Exception {
        team = new Team();
        stores = team.stores(Fixture.NOON);
    }

    @AfterAll
    static void close() {
        if (team != null) {
            team.close();
        }
    }

    @BeforeEach
    void makeAProjectAndLetEverybodyJoin() throws Exception {
        stores.shared().create(team.place(TeamRole.COORDINATOR), top.resolve("school"), "School", Fixture.files(top),
                Fixture.ANNA);
        try (ProjectSource source = stores.read(top.resolve("school"))) {
            id = source.id();
        }
        for (TeamRole role : TeamRole.values()) {
            stores.shared().join(team.place(role), top.resolve(role.id()), Optional.of(id));
        }
    }

    @ParameterizedTest
    @EnumSource(TeamRole.class)
    void everybodyReadsEverything(TeamRole role) throws Exception {
        try (ProjectSource source = stores.read(top.resolve(role.id()))) {
            Original offers = source.journal().state().parts().get(Part.OFFERS).files().get(0);
            source.write(offers, top.resolve("out.xlsx"));
            assertEquals(offers.size(), Files.size(top.resolve("out.xlsx")));
        }
    }

    @ParameterizedTest
    @EnumSource(value = TeamRole.class, names = "COORDINATOR", mode = EnumSource.Mode.EXCLUDE)
    void onlyTheCoordinatorDecides(TeamRole role) throws Exception {
        try (ProjectStore store = stores.open(top.resolve(role.id()))) {
            StoreException said = assertThrows(StoreException.class,
                    () -> store.append(Fixture.correction("K-1", "office"), PAULA));
            assertEquals(Trouble.DENIED, said.trouble());
            assertTrue(said.getMessage().contains("doesn't let its user " + Team.user(role)), said.getMessage());
            assertEquals(2, store.journal().last().number());
        }
        try (ProjectStore store = stores.open(top.resolve("coordinator"))) {
            assertEquals(3, store.append(Fixture.correction("K-1", "office"), Fixture.ANNA).number());
        }
    }

    @Test
    void procurementBringsInOffersAndNothingElse() throws Exception {
        Path file = Files.writeString(top.resolve("new.csv"), "supplier\n");
        try (ProjectStore store = stores.open(top.resolve("procurement"))) {
            Original original = store.keep("offers.csv", file);
            Entry offers = store.append(new Change.Imported(Map.of(Part.OFFERS, List.of(original))), PAULA);
            store.append(new Change.TakenBack(offers.number()), PAULA);
            for (Change denied : List.of(new Change.Imported(Map.of(Part.FLEET, List.of(original))),
                    new Change.Imported(Map.of(Part.FLEET, List.of(original), Part.OFFERS, List.of(original))),
                    new Change.TakenBack(2))) {
                assertEquals(Trouble.DENIED, assertThrows(StoreException.class,
                        () -> store.append(denied, PAULA)).trouble(), denied.toString());
            }
            assertEquals(4, store.journal().last().number());
        }
    }

    @Test
    void eachRoleWritesTheKindsOfItsWork() throws Exception {
        insert(TeamRole.PROCUREMENT, "traded", 3);
        insert(TeamRole.TECHNICIAN, "worked", 4);
        insert(TeamRole.COORDINATOR, "traded", 5);
        insert(TeamRole.COORDINATOR, "worked", 6);
        refused("row-level security", () -> insert(TeamRole.PROCUREMENT, "worked", 7));
        refused("row-level security", () -> insert(TeamRole.TECHNICIAN, "traded", 7));
        refused("row-level security", () -> insert(TeamRole.TECHNICIAN, "imported", 7));
        refused("permission denied", () -> insert(TeamRole.READER, "worked", 7));
    }

    @ParameterizedTest
    @ValueSource(strings = {"update entry set who = 'x'", "delete from entry", "truncate entry",
        "update original set size = 0", "delete from original_piece", "delete from project",
        "alter table entry disable trigger all", "drop table entry",
        "alter table entry disable row level security"})
    void nobodyOfTheTeamChangesWhatIsWritten(String sql) {
        for (TeamRole role : TeamRole.values()) {
            assertThrows(IllegalStateException.class,
                    () -> team.sql(role, "set search_path = slotledger; " + sql), role + ": " + sql);
        }
        assertEquals("2", team.admin("select count(*) from slotledger.entry where project = '" + id + "'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"update entry set who = 'x'", "delete from entry",
        "truncate entry, original, project cascade",
        "update original set size = 0 where false"})
    void notEvenTheOwnerDoesItByMistake(String sql) {
        refused("never changed or deleted", () -> team.admin("set search_path = slotledger; " + sql));
    }

    @Test
    void anEntryThatDoesNotFollowOrWithAWrongSealIsRefused() throws Exception {
        refused("none before it", () -> insert(TeamRole.COORDINATOR, "worked", 4));
        refused("seal is wrong", () -> team.sql(TeamRole.COORDINATOR, "insert into slotledger.entry (project, number, "
                + "made, who, why, kind, change, seal) values ('" + id + "', 3, now(), 'x', '', 'worked', '{}', '"
                + "0".repeat(64) + "')"));
    }

    @Test
    void theDatabaseKnowsItsUserWhateverNameStandsInTheEntry() throws Exception {
        insert(TeamRole.TECHNICIAN, "worked", 3);
        assertEquals("anna|tim", team.admin("select who, login from slotledger.entry where number = 3 and project = '"
                + id + "'"));
    }

    @Test
    void theCoordinatorGivesRolesOnlyWhereTheServerAllowsIt() throws Exception {
        DefaultProjectStores asOwner = team.stores(Fixture.NOON);
        asOwner.shared().join(team.place("admin"), top.resolve("owner"), Optional.of(id));
        assertTrue(asOwner.shared().admit(top.resolve("owner"), "new \"person\"" + id, TeamRole.TECHNICIAN));
        asOwner.shared().admit(top.resolve("owner"), "new \"person\"" + id, TeamRole.READER);
        assertEquals("slotledger_reader", team.admin("select g.rolname from pg_auth_members m join pg_roles g on g.oid"
                + " = m.roleid join pg_roles p on p.oid = m.member where p.rolname = 'new \"person\"" + id + "'"));
        StoreException said = assertThrows(StoreException.class,
                () -> stores.shared().admit(top.resolve("technician"), "somebody", TeamRole.COORDINATOR));
        assertEquals(Trouble.DENIED, said.trouble());
    }

    /** Writes an entry with a right seal, as some other program could. */
    private void insert(TeamRole role, String kind, long number) throws Exception {
        String before = team.admin("select seal from slotledger.entry where project = '" + id + "' and number = "
                + (number - 1));
        Instant made = Instant.parse("2026-11-28T12:00:00.120Z").plusSeconds(number);
        EntryRow open = new EntryRow(number, made.toString(), "anna", "f\u00fcr \"K-1\"", kind, "{}", "");
        team.sql(role, "insert into slotledger.entry (project, number, made, who, why, kind, change, seal) values ('"
                + id + "', " + number + ", '" + made + "', 'anna', '" + open.why() + "', '" + kind + "', '{}', '"
                + open.sealAfter(before) + "')");
    }

    private static void refused(String words, Executable work) {
        String said = assertThrows(IllegalStateException.class, work).getMessage();
        assertTrue(said.contains(words), said);
    }
}
