package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** The disk is full, may not be written, or holds half of a project: words, and nothing is lost. */
class DiskTest {

    private static final int SMALL = 12;
    private static final int ROUNDS = 10;
    private static final int PIECES = 24;

    @TempDir
    Path top;

    private final DefaultProjectStores stores = Fixture.stores();
    private final Random random = new Random(20261128);

    @Test
    void nothingThatWasAcknowledgedIsLostWhenTheDiskGetsFull(TestReporter reporter) throws Exception {
        int acknowledged = 2;
        int refused = 0;
        try (SmallDisk disk = SmallDisk.at(top.resolve("disk"), SMALL)) {
            Path folder = disk.folder().resolve("school");
            stores.create(folder, "School", Fixture.files(top), Fixture.ANNA);
            for (int round = 0; round < ROUNDS; round++) {
                Path filler = disk.fill(random.nextInt(400_000));
                // As a user would: try until it fails, then make room and go on.
                for (StoreException said = null; said == null;) {
                    try (ProjectStore store = stores.open(folder)) {
                        assertEquals(acknowledged, store.journal().last().number());
                        append(store, acknowledged + 1);
                        acknowledged++;
                    } catch (StoreException problem) {
                        said = problem;
                        refused++;
                        assertTrue(said.getMessage().contains("room") || said.getMessage().contains("not sure"),
                                said.getMessage());
                    }
                }
                Files.delete(filler);
                try (ProjectSource source = stores.read(folder)) {
                    long last = source.journal().last().number();
                    assertTrue(last == acknowledged || last == acknowledged + 1, last + " after " + acknowledged);
                    acknowledged = (int) last;
                    for (Entry entry : source.journal().entries().subList(2, (int) last)) {
                        assertEquals("entry " + entry.number(), entry.author().why());
                    }
                    for (Original original : source.journal().state().files()) {
                        source.write(original, top.resolve("out-" + round).resolve(original.name()));
                    }
                }
            }
        }
        reporter.publishEntry("disk full", refused + " times, " + (acknowledged - 2) + " entries, none lost");
    }

    private void append(ProjectStore store, int number) throws IOException, StoreException {
        byte[] bytes = new byte[50_000];
        random.nextBytes(bytes);
        Path file = Files.write(top.resolve("fleet.csv"), bytes);
        Original fleet = store.keep("fleet.csv", file);
        store.append(new Change.Imported(Map.of(Part.FLEET, List.of(fleet))), new Author("anna", "entry " + number));
    }

    @Test
    void aProjectThatFindsNoRoomIsNotMadeAndAPackedOneNeither() throws Exception {
        try (SmallDisk disk = SmallDisk.at(top.resolve("disk"), SMALL)) {
            Path filler = disk.fill(300_000);
            Path folder = disk.folder().resolve("school");
            StoreException said = assertThrows(StoreException.class,
                    () -> stores.create(folder, "School", Fixture.files(top), Fixture.ANNA));
            assertEquals(Trouble.UNWRITABLE, said.trouble());
            Path project = Fixture.project(top);
            Files.delete(filler);
            disk.fill(4096);
            assertEquals(Trouble.UNWRITABLE, assertThrows(StoreException.class,
                    () -> stores.pack(project, disk.folder().resolve("school.slotledger"), false)).trouble());
            Files.delete(filler);
            try (var left = Files.list(disk.folder())) {
                assertEquals(List.of(), left.toList());
            }
        }
    }

    @Test
    void aProjectOnADiskThatMayNotBeWrittenIsReadAndStaysAsItIs() throws Exception {
        try (SmallDisk disk = SmallDisk.at(top.resolve("disk"), SMALL)) {
            Path folder = disk.folder().resolve("school");
            stores.create(folder, "School", Fixture.files(top), Fixture.ANNA);
            disk.makeReadOnly();
            try (ProjectStore store = stores.open(folder)) {
                assertEquals(2, store.journal().last().number());
                StoreException said = assertThrows(StoreException.class,
                        () -> store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA));
                assertEquals(Trouble.UNWRITABLE, said.trouble());
                assertTrue(said.getMessage().contains("can be read but not changed"), said.getMessage());
            }
            stores.pack(folder, top.resolve("school.slotledger"), false);
        }
        try (ProjectSource source = stores.read(top.resolve("school.slotledger"))) {
            assertEquals(2, source.journal().last().number());
        }
    }

    @Test
    void whatWasCopiedInPartIsRefusedAndNotTouched() throws Exception {
        Path folder = Fixture.project(top);
        Path packed = top.resolve("school.slotledger");
        stores.pack(folder, packed, false);
        byte[] whole = Files.readAllBytes(folder.resolve(H2File.NAME));
        byte[] all = Files.readAllBytes(packed);
        int refused = 0;
        for (int part = 0; part < PIECES; part++) {
            Path copy = Files.createDirectory(top.resolve("copy-" + part));
            Files.copy(folder.resolve(Mark.NAME), copy.resolve(Mark.NAME));
            byte[] cut = Arrays.copyOf(whole, (int) ((long) whole.length * part / PIECES));
            Files.write(copy.resolve(H2File.NAME), cut);
            if (isRefused(copy)) {
                refused++;
                assertArrayEquals(cut, Files.readAllBytes(copy.resolve(H2File.NAME)), "cut " + part);
            }
            byte[] cutPack = Arrays.copyOf(all, (int) ((long) all.length * part / PIECES));
            Path half = Files.write(top.resolve("half.slotledger"), cutPack);
            assertTrue(isRefused(half));
            assertArrayEquals(cutPack, Files.readAllBytes(half));
        }
        assertTrue(refused > 3, refused + " cuts were noticed");
        assertFalse(isRefused(folder));
    }

    private boolean isRefused(Path place) {
        try (ProjectSource source = stores.read(place)) {
            source.journal();
            return false;
        } catch (StoreException said) {
            assertEquals(Trouble.DAMAGED, said.trouble(), said.getMessage());
            assertTrue(said.getMessage().contains("only in part"), said.getMessage());
            return true;
        }
    }
}
