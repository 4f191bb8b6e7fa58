package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slotledger.model.project.Change;
import slotledger.model.project.Part;
import slotledger.model.project.TeamRole;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Projects in PostgreSQL: the contract, and what only a team has. */
class TeamStoreTest extends ProjectStoreContract {

    private static Team team;
    private static DefaultProjectStores stores;
    private static DefaultProjectStores others;

    @BeforeAll
    static void makeADatabase() throws Exception {
        team = new Team();
        stores = team.stores(Fixture.NOON);
        others = Team.otherProgram();
    }

    @AfterAll
    static void close() {
        if (team != null) {
            others.deactivate();
            team.close();
        }
    }

    @Override
    DefaultProjectStores stores() {
        return stores;
    }

    @Override
    DefaultProjectStores otherStores() {
        return others;
    }

    @Override
    DefaultProjectStores withClock(Clock clock) {
        return team.stores(clock);
    }

    @Override
    Path project(String name, Map<Part, Map<String, Path>> files) throws Exception {
        stores.shared().create(team.place(TeamRole.COORDINATOR), top.resolve(name), "School", files, Fixture.ANNA);
        return top.resolve(name);
    }

    @Test
    void theFolderHoldsOneSmallTextFileWithoutAPassword() throws Exception {
        try (var files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
        String text = Files.readString(folder.resolve(TeamFile.NAME));
        assertTrue(text.contains("user=anna"), text);
        assertEquals(new TeamFile(team.place(TeamRole.COORDINATOR), idOf(folder)), TeamFile.read(folder));
    }

    @Test
    void aProjectGoesIntoTheDatabaseAndOutAgainWithItsWholeHistory() throws Exception {
        Path packed = top.resolve("school.slotledger");
        try (ProjectStore store = stores.open(folder)) {
            store.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
            store.append(new Change.TakenBack(3), BEN);
        }
        stores.pack(folder, packed, false);
        stores.unpack(packed, top.resolve("alone"));
        try (Team another = new Team(); ProjectSource before = stores.read(folder)) {
            DefaultProjectStores there = another.stores(Fixture.NOON);
            there.shared().share(another.place(TeamRole.COORDINATOR), top.resolve("again"), top.resolve("alone"));
            try (ProjectSource after = there.read(top.resolve("again"))) {
                assertEquals(before.id(), after.id());
                assertEquals(before.journal(), after.journal());
            }
            there.pack(top.resolve("again"), top.resolve("again.slotledger"), false);
        }
        assertEquals(-1, Files.mismatch(packed, top.resolve("again.slotledger")));
    }

    @Test
    void aProjectThatWentOnInTheDatabaseIsNotBroughtInAgain() throws Exception {
        Path packed = top.resolve("school.slotledger");
        stores.pack(folder, packed, false);
        try (ProjectStore store = stores.open(folder)) {
            store.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
        }
        StoreException said = assertThrows(StoreException.class,
                () -> stores.shared().share(team.place(TeamRole.COORDINATOR), top.resolve("again"), packed));
        assertEquals(Trouble.EXISTS, said.trouble());
        assertFalse(Files.exists(top.resolve("again")));
    }

    @Test
    void aPackedProjectOfTheFirstFormGoesIntoTheDatabase() throws Exception {
        Path packed = top.resolve("sample.slotledger");
        try (InputStream sample = SamplesTest.class.getResourceAsStream("form-1/school.slotledger")) {
            Files.copy(sample, packed);
        }
        try (Team another = new Team(); ProjectSource before = stores.read(packed)) {
            DefaultProjectStores there = another.stores(Fixture.NOON);
            there.shared().share(another.place(TeamRole.COORDINATOR), top.resolve("sample"), packed);
            try (ProjectStore after = there.open(top.resolve("sample"))) {
                assertEquals(before.journal(), after.journal());
                after.append(new Change.Restored(5), Fixture.ANNA);
            }
        }
    }

    @Test
    void anotherPersonJoins() throws Exception {
        others.shared().join(team.place(TeamRole.TECHNICIAN), top.resolve("of-tim"), Optional.of(idOf(folder)));
        try (ProjectSource source = others.read(top.resolve("of-tim"))) {
            assertEquals(2, source.journal().last().number());
        }
        project("second", Map.of());
        StoreException which = assertThrows(StoreException.class, () -> others.shared()
                .join(team.place(TeamRole.TECHNICIAN), top.resolve("again"), Optional.empty()));
        assertTrue(which.getMessage().contains("Say which with --project"), which.getMessage());
    }

    @Test
    void preparingAgainDoesNoHarm() throws Exception {
        stores.shared().prepare(team.place("admin"));
        assertEquals(2, reopened().last().number());
    }

    @Test
    void aFolderThatHoldsAProjectAndLeadsToAnotherIsRefused() throws Exception {
        Files.writeString(folder.resolve(H2File.NAME), "x");
        StoreException said = assertThrows(StoreException.class, () -> stores.open(folder));
        assertTrue(said.getMessage().contains("is not meant"), said.getMessage());
    }

    private static UUID idOf(Path folder) throws StoreException {
        try (ProjectSource source = stores.read(folder)) {
            return source.id();
        }
    }
}
