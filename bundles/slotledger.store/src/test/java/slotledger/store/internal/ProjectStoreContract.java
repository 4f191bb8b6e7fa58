package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
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
import slotledger.model.project.Watch;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** What every store of projects keeps to, whatever database it is on. */
abstract class ProjectStoreContract {

    static final Author BEN = new Author("ben", "counted again");

    @TempDir
    Path top;

    Path folder;

    /** The stores of one program. */
    abstract DefaultProjectStores stores();

    /** The stores of another program. */
    abstract DefaultProjectStores otherStores();

    /** Makes a project of files. */
    abstract Path project(String name, Map<Part, Map<String, Path>> files) throws Exception;

    @BeforeEach
    void makeAProject() throws Exception {
        folder = project("school", Fixture.files(top));
    }

    @Test
    void aProjectIsReadAgainAsItWasMade() throws Exception {
        assertTrue(stores().isProject(folder));
        try (ProjectSource source = stores().read(folder)) {
            assertEquals("School", source.journal().state().title());
            assertEquals(2, source.journal().last().number());
            assertEquals(Fixture.ANNA, source.journal().last().author());
            assertEquals(Instant.parse("2026-11-28T12:00:00.123Z"), source.journal().last().made());
        }
    }

    @Test
    void everyOriginalComesBackByteForByte() throws Exception {
        try (ProjectSource source = stores().read(folder)) {
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
        try (ProjectStore store = stores().open(folder)) {
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
        try (ProjectSource source = stores().read(folder)) {
            List<Entry> entries = source.journal().entries();
            assertEquals(changes, entries.subList(2, entries.size()).stream().map(Entry::change).toList());
            assertEquals("because\nof \"this\"", source.journal().last().author().why());
        }
    }

    @Test
    void whatOthersWroteIsTakenInByARefresh() throws Exception {
        try (ProjectStore one = stores().open(folder); ProjectStore other = stores().open(folder)) {
            one.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
            one.append(Works.everyKindOfEvent(), Fixture.ANNA);
            other.refresh();
            assertEquals(one.journal(), other.journal());
            assertEquals(5, other.append(Works.rounds(), BEN).number());
        }
    }

    @Test
    void whatIsSentTwiceIsWrittenOnce() throws Exception {
        try (ProjectStore one = stores().open(folder); ProjectStore other = stores().open(folder)) {
            Change events = Works.everyKindOfEvent();
            one.append(events, Fixture.ANNA);
            assertEquals(Trouble.CHANGED,
                    assertThrows(StoreException.class, () -> other.append(events, BEN)).trouble());
        }
    }

    @Test
    void aProjectWhoseJournalIsKnownIsOpenedWithWhatCameSince() throws Exception {
        Journal known;
        try (ProjectStore store = stores().open(folder)) {
            known = store.journal();
            store.append(Works.everyKindOfEvent(), Fixture.ANNA);
        }
        try (ProjectStore store = stores().open(folder, known)) {
            assertEquals(3, store.journal().last().number());
            store.append(Works.rounds(), Fixture.ANNA);
        }
        try (ProjectSource source = stores().read(folder); ProjectStore store = stores().open(folder, known)) {
            assertEquals(source.journal(), store.journal());
        }
    }

    @Test
    void aJournalOfAnotherProjectIsNotBelieved() throws Exception {
        Path second = project("other", Map.of());
        try (ProjectStore other = stores().open(second); ProjectStore store = stores().open(folder, other.journal())) {
            assertEquals(2, store.journal().last().number());
            assertNotEquals(other.journal(), store.journal());
        }
    }

    @Test
    void undoBringsTheEarlierFilesBackAndRedoTheLater() throws Exception {
        try (ProjectStore store = stores().open(folder)) {
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
        try (ProjectStore store = stores().open(folder)) {
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
        try (ProjectStore store = stores().open(folder)) {
            original = store.keep("new.csv", file);
        }
        try (ProjectSource source = stores().read(folder)) {
            assertThrows(StoreException.class, () -> source.write(original, top.resolve("none")));
        }
    }

    @Test
    void ofTwoPeopleWhoChangeTheSameMachineTheSecondIsToldWhoDidWhat() throws Exception {
        try (ProjectStore one = stores().open(folder); ProjectStore other = otherStores().open(folder)) {
            one.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
            Change pin = new Change.Decided(new Decision.Pinned(new AssetTag("K-1"), Map.of(), "DIMM1 4 GB"));
            StoreException refused = assertThrows(StoreException.class, () -> other.append(pin, BEN));
            assertEquals(Trouble.CHANGED, refused.trouble());
            assertTrue(refused.getMessage().contains("Entry 3, 2026-11-28 "), refused.getMessage());
            assertTrue(refused.getMessage().contains(
                    "anna corrected the role of K-1 from \"ofice\" to \"office\" (\"spring list\")"),
                    refused.getMessage());
            // Once more, knowing it.
            assertEquals(4, other.append(pin, BEN).number());
        }
        assertEquals(4, reopened().last().number());
    }

    @Test
    void ofTwoPeopleWhoBringInTheSamePartTheSecondIsTold() throws Exception {
        try (ProjectStore one = stores().open(folder); ProjectStore other = otherStores().open(folder)) {
            Fixture.importFleet(one, top, "tag\nK-2\n");
            Path file = Files.writeString(top.resolve("of-ben.csv"), "tag\nK-3\n");
            Change change = new Change.Imported(Map.of(Part.FLEET, List.of(other.keep("fleet.csv", file))));
            StoreException refused = assertThrows(StoreException.class, () -> other.append(change, BEN));
            assertTrue(refused.getMessage().contains("anna brought in fleet 2 (fleet.csv)"), refused.getMessage());
        }
        assertEquals("fleet 2", fleet(reopened()));
    }

    @Test
    void whatSomebodyElseTookBackIsNotTakenBackAgain() throws Exception {
        try (ProjectStore one = stores().open(folder); ProjectStore other = otherStores().open(folder)) {
            one.append(new Change.TakenBack(2), Fixture.ANNA);
            StoreException refused =
                    assertThrows(StoreException.class, () -> other.append(new Change.TakenBack(2), BEN));
            assertEquals(Trouble.CHANGED, refused.trouble());
            assertTrue(refused.getMessage().contains("anna took back entry 2"), refused.getMessage());
        }
    }

    @Test
    void differentThingsJustBothHoldAndKeptFilesAreNotLost() throws Exception {
        Path file = Files.writeString(top.resolve("of-ben.csv"), "tag\nK-3\n");
        try (ProjectStore one = stores().open(folder); ProjectStore other = otherStores().open(folder)) {
            one.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
            Original fleet = other.keep("fleet.csv", file);
            assertEquals(4, other.append(new Change.Imported(Map.of(Part.FLEET, List.of(fleet))), BEN).number());
            assertEquals(4, other.journal().entries().size());
            one.append(Fixture.correction("K-9", "office"), Fixture.ANNA);
        }
        assertEquals(5, reopened().last().number());
        try (ProjectSource source = stores().read(folder)) {
            source.write(source.journal().state().parts().get(Part.FLEET).files().get(0), top.resolve("back.csv"));
        }
        assertEquals("tag\nK-3\n", Files.readString(top.resolve("back.csv")));
    }

    @Test
    void whatWasDecidedOnOlderKnowledgeIsHeldAgainstEverythingSince() throws Exception {
        try (ProjectStore one = stores().open(folder)) {
            one.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
        }
        try (ProjectStore later = stores().open(folder)) {
            assertThrows(StoreException.class, () -> later.append(Fixture.correction("K-1", "lab"), BEN, 2));
            assertEquals(4, later.append(Fixture.correction("K-1", "lab"), BEN, 3).number());
        }
    }

    @Test
    void whoDecidesTwiceAboutAMachineIsNotInTheirOwnWayButOthersOfTheSameNameAre() throws Exception {
        try (ProjectStore store = stores().open(folder)) {
            store.append(Fixture.correction("K-1", "office"), BEN, 2);
        }
        try (ProjectStore store = stores().open(folder)) {
            assertEquals(4, store.append(Fixture.correction("K-1", "lab"), BEN, 2).number());
            assertThrows(StoreException.class, () -> store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA, 2));
        }
        try (ProjectStore store = otherStores().open(folder)) {
            assertThrows(StoreException.class, () -> store.append(Fixture.correction("K-1", "lab"), BEN, 2));
        }
    }

    @Test
    void manyPeopleAtOnceLoseNothing() throws Exception {
        int people = 4;
        int each = 10;
        ExecutorService programs = Executors.newFixedThreadPool(people);
        List<Future<?>> all = new ArrayList<>();
        for (int person = 0; person < people; person++) {
            String who = "person " + person;
            all.add(programs.submit(() -> {
                for (int i = 0; i < each; i++) {
                    try (ProjectStore store = stores().open(folder)) {
                        store.append(Fixture.correction(who + "-" + i, "office"), new Author(who, ""));
                    }
                }
                return null;
            }));
        }
        for (Future<?> one : all) {
            one.get();
        }
        programs.shutdown();
        Journal journal = reopened();
        assertEquals(2 + people * each, journal.last().number());
        assertEquals(people * each, journal.state().decisions().size());
    }

    @Test
    void changesOfOthersAreToldWithinTwoSeconds() throws Exception {
        BlockingQueue<Long> told = new LinkedBlockingQueue<>();
        Watch watch = stores().watch(folder, told::add);
        try {
            for (long entry = 3; entry < 6; entry++) {
                try (ProjectStore store = otherStores().open(folder)) {
                    store.append(Fixture.correction("K-" + entry, "office"), BEN);
                }
                assertEquals(entry, told.poll(2, TimeUnit.SECONDS));
            }
        } finally {
            watch.close();
        }
        try (ProjectStore store = otherStores().open(folder)) {
            store.append(Fixture.correction("K-6", "office"), BEN);
        }
        assertNull(told.poll(1500, TimeUnit.MILLISECONDS), "a watch that was closed must be silent");
    }

    @Test
    void anEntryDatedBeforeItsPredecessorIsKeptAndSaid() throws Exception {
        Clock late = Clock.fixed(Fixture.NOON.instant().minusSeconds(86_400), ZoneOffset.UTC);
        try (ProjectStore store = withClock(late).open(folder)) {
            store.append(Fixture.correction("K-1", "office"), BEN);
        }
        Journal journal = reopened();
        assertTrue(journal.isDatedBeforeItsPredecessor(3));
        assertFalse(journal.isDatedBeforeItsPredecessor(2));
        assertEquals(1, journal.state().decisions().size());
    }

    /** The stores of a program whose clock is wrong. */
    abstract DefaultProjectStores withClock(Clock clock);

    final Journal reopened() throws StoreException {
        try (ProjectSource source = stores().read(folder)) {
            return source.journal();
        }
    }

    static String fleet(Journal journal) {
        return journal.state().parts().get(Part.FLEET).toString();
    }
}
