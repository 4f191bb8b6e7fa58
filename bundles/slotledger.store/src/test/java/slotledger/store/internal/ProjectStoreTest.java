package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

class ProjectStoreTest {

    @TempDir
    Path top;

    private final DefaultProjectStores stores = Fixture.stores();
    private Path folder;

    @BeforeEach
    void makeAProject() throws Exception {
        folder = Fixture.project(top);
    }

    @Test
    void aProjectIsReadAgainAsItWasMade() throws Exception {
        assertTrue(stores.isProject(folder));
        try (ProjectSource source = stores.read(folder)) {
            assertEquals("School", source.journal().state().title());
            assertEquals(2, source.journal().last().number());
            assertEquals(Fixture.ANNA, source.journal().last().author());
            assertEquals(Instant.parse("2026-11-28T12:00:00.123Z"), source.journal().last().made());
        }
    }

    @Test
    void everyOriginalComesBackByteForByte() throws Exception {
        try (ProjectSource source = stores.read(folder)) {
            for (Original original : source.journal().state().files()) {
                source.write(original, top.resolve("out").resolve(original.name()));
                assertArrayEquals(Files.readAllBytes(top.resolve(original.name())),
                        Files.readAllBytes(top.resolve("out").resolve(original.name())));
            }
            assertEquals(2, source.journal().state().files().size());
        }
    }

    @Test
    void everyKindOfChangeIsReadAgainAsItWasWritten() throws Exception {
        Map<String, String> slots = new LinkedHashMap<>();
        slots.put("DIMM2", "8 GB \"x\"");
        slots.put("DIMM1", "empty");
        Path file = Files.writeString(top.resolve("p.json"), "{}");
        List<Change> changes;
        try (ProjectStore store = stores.open(folder)) {
            Original plan = store.keep("plan.json", file);
            changes = new ArrayList<>(Works.everyKindOfTrade());
            changes.addAll(List.of(
                    new Change.Planned(plan, "Wave 1 — Frühling", LocalDate.of(2026, 11, 24), 2),
                    new Change.Decided(new Decision.Pinned(new AssetTag("K-1"), slots, "DIMM1 4 GB")),
                    new Change.Decided(new Decision.Mute("odd-size", "K-1", "3 GB")),
                    Fixture.correction("K-1", "office"),
                    new Change.Imported(Map.of(Part.OFFERS, List.of())),
                    new Change.TakenBack(13),
                    new Change.Restored(13),
                    Works.rounds(),
                    Works.everyKindOfEvent()));
            for (Change change : changes) {
                store.append(change, new Author("Zoë", "because\nof \"this\""));
            }
        }
        try (ProjectSource source = stores.read(folder)) {
            List<Entry> entries = source.journal().entries();
            assertEquals(changes, entries.subList(2, entries.size()).stream().map(Entry::change).toList());
            assertEquals("because\nof \"this\"", source.journal().last().author().why());
        }
    }

    @Test
    void undoBringsTheEarlierFilesBackAndRedoTheLater() throws Exception {
        try (ProjectStore store = stores.open(folder)) {
            Fixture.importFleet(store, top, "tag\nK-2\n");
            assertEquals("fleet 2", fleet(store.journal()));
            store.append(new Change.TakenBack(store.journal().undoable().getAsLong()), Fixture.ANNA);
            assertEquals("fleet 1", fleet(store.journal()));
            store.append(new Change.Restored(store.journal().redoable().getAsLong()), Fixture.ANNA);
            assertEquals("fleet 2", fleet(store.journal()));
        }
    }

    @Test
    void whatWasTakenBackCannotBeTakenBackAgain() throws Exception {
        try (ProjectStore store = stores.open(folder)) {
            store.append(new Change.TakenBack(2), Fixture.ANNA);
            assertEquals(Trouble.REFUSED, assertThrows(StoreException.class,
                    () -> store.append(new Change.TakenBack(2), Fixture.ANNA)).trouble());
            assertEquals(Trouble.REFUSED, assertThrows(StoreException.class,
                    () -> store.append(new Change.Restored(3), Fixture.ANNA)).trouble());
            assertEquals(3, store.journal().last().number());
        }
    }

    @Test
    void aFileKeptWithoutAnEntryLeavesNothing() throws Exception {
        Path file = Files.writeString(top.resolve("new.csv"), "x");
        Original original;
        try (ProjectStore store = stores.open(folder)) {
            original = store.keep("new.csv", file);
        }
        try (ProjectSource source = stores.read(folder)) {
            assertThrows(StoreException.class, () -> source.write(original, top.resolve("none")));
        }
    }

    @Test
    void twoWritersOfTheSameEntryCollideAndNothingIsLost() throws Exception {
        try (ProjectStore one = stores.open(folder); ProjectStore other = stores.open(folder)) {
            one.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
            StoreException refused = assertThrows(StoreException.class,
                    () -> other.append(Fixture.correction("K-1", "lab"), new Author("ben", "")));
            assertEquals(Trouble.CHANGED, refused.trouble());
        }
        try (ProjectSource source = stores.read(folder)) {
            assertEquals(Fixture.correction("K-1", "office"), source.journal().last().change());
        }
    }

    @Test
    void whatOthersWroteIsTakenInByARefresh() throws Exception {
        try (ProjectStore one = stores.open(folder); ProjectStore other = stores.open(folder)) {
            one.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
            one.append(Works.everyKindOfEvent(), Fixture.ANNA);
            other.refresh();
            assertEquals(one.journal(), other.journal());
            assertEquals(5, other.append(Works.rounds(), new Author("ben", "")).number());
        }
    }

    @Test
    void aProjectWhoseJournalIsKnownIsOpenedWithWhatCameSince() throws Exception {
        Journal known;
        try (ProjectStore store = stores.open(folder)) {
            known = store.journal();
            store.append(Works.everyKindOfEvent(), Fixture.ANNA);
        }
        try (ProjectStore store = stores.open(folder, known)) {
            assertEquals(3, store.journal().last().number());
            store.append(Works.rounds(), Fixture.ANNA);
        }
        try (ProjectSource source = stores.read(folder); ProjectStore store = stores.open(folder, known)) {
            assertEquals(source.journal(), store.journal());
        }
    }

    @Test
    void aJournalOfAnotherProjectIsNotBelieved() throws Exception {
        stores.create(top.resolve("other"), "Other", Map.of(), Fixture.ANNA);
        try (ProjectStore other = stores.open(top.resolve("other"));
                ProjectStore store = stores.open(folder, other.journal())) {
            assertEquals("School", store.journal().state().title());
            assertEquals(2, store.journal().last().number());
        }
    }

    @Test
    void nothingIsMadeWhereSomethingIs() throws Exception {
        Files.createDirectories(top.resolve("full"));
        Files.writeString(top.resolve("full/mine.txt"), "mine");
        assertEquals(Trouble.EXISTS, assertThrows(StoreException.class,
                () -> stores.create(top.resolve("full"), "x", Map.of(), Fixture.ANNA)).trouble());
        assertEquals(List.of("mine.txt"), names(top.resolve("full")));
    }

    @Test
    void aProjectThatCannotBeMadeLeavesNothing() throws IOException {
        assertThrows(StoreException.class, () -> stores.create(top.resolve("new"), "x",
                Map.of(Part.FLEET, Map.of("fleet.csv", top.resolve("missing.csv"))), Fixture.ANNA));
        assertFalse(Files.exists(top.resolve("new")));
        assertEquals(List.of(), names(top).stream().filter(name -> name.startsWith(".")).toList());
    }

    @Test
    void aFolderWithoutAProjectIsNamed() {
        StoreException missing = assertThrows(StoreException.class, () -> stores.open(top));
        assertEquals(Trouble.MISSING, missing.trouble());
        assertTrue(missing.getMessage().contains("project create"), missing.getMessage());
    }

    @Test
    void aProjectFolderMayBeMovedAnywhere() throws Exception {
        Path moved = Files.move(folder, top.resolve("mit Ümlaut & blank"));
        try (ProjectStore store = new DefaultProjectStores(Clock.systemUTC(), Schema.today(), Duration.ZERO)
                .open(moved)) {
            Fixture.importFleet(store, top, "tag\nK-2\n");
            assertEquals(3, store.journal().last().number());
        }
    }

    private static String fleet(Journal journal) {
        return journal.state().parts().get(Part.FLEET).toString();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
