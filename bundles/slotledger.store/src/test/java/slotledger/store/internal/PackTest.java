package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.project.Change;
import slotledger.model.project.Original;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

class PackTest {

    @TempDir
    Path top;

    private final DefaultProjectStores stores = Fixture.stores();
    private Path folder;
    private Path packed;

    @BeforeEach
    void packAProject() throws Exception {
        folder = Fixture.project(top);
        try (ProjectStore store = stores.open(folder)) {
            Fixture.importFleet(store, top, "tag\nK-2\n");
            store.append(Fixture.correction("K-2", "office"), Fixture.ANNA);
            store.append(new Change.TakenBack(3), Fixture.ANNA);
        }
        packed = top.resolve("school.slotledger");
        stores.pack(folder, packed, false);
    }

    @Test
    void aPackedProjectUnpacksToTheSameJournalAndOriginals() throws Exception {
        stores.unpack(packed, top.resolve("again"));
        try (ProjectSource one = stores.read(folder); ProjectSource other = stores.read(top.resolve("again"))) {
            assertEquals(one.id(), other.id());
            assertEquals(one.journal(), other.journal());
            for (Original original : other.journal().state().files()) {
                one.write(original, top.resolve("a").resolve(original.name()));
                other.write(original, top.resolve("b").resolve(original.name()));
                assertArrayEquals(Files.readAllBytes(top.resolve("a").resolve(original.name())),
                        Files.readAllBytes(top.resolve("b").resolve(original.name())));
            }
        }
        stores.pack(top.resolve("again"), top.resolve("again.slotledger"), false);
        assertArrayEquals(Files.readAllBytes(packed), Files.readAllBytes(top.resolve("again.slotledger")));
    }

    @Test
    void whatWasUnpackedGoesOn() throws Exception {
        stores.unpack(packed, top.resolve("again"));
        try (ProjectStore store = stores.open(top.resolve("again"))) {
            store.append(new Change.Restored(3), Fixture.ANNA);
            assertEquals(6, store.journal().last().number());
        }
    }

    @Test
    void aPackedProjectIsReadWithoutUnpacking() throws Exception {
        assertTrue(stores.isProject(packed));
        try (ProjectSource source = stores.read(packed)) {
            Original fleet = source.journal().state().files().get(0);
            source.write(fleet, top.resolve("fleet-out.csv"));
            assertEquals("tag;model\nK-1;KB-510\n", Files.readString(top.resolve("fleet-out.csv")));
        }
        assertEquals(Trouble.REFUSED, assertThrows(StoreException.class, () -> stores.open(packed)).trouble());
    }

    @Test
    void anOlderPackedFileIsNotReplacedWithoutAsking() throws Exception {
        assertEquals(Trouble.EXISTS,
                assertThrows(StoreException.class, () -> stores.pack(folder, packed, false)).trouble());
        stores.pack(folder, packed, true);
    }

    @Test
    void aFileCutAnywhereIsRefusedAndNothingIsUnpacked() throws Exception {
        byte[] whole = Files.readAllBytes(packed);
        for (int part = 0; part < 40; part++) {
            Path cut = top.resolve("cut.slotledger");
            Files.write(cut, Arrays.copyOf(whole, (int) ((long) whole.length * part / 40)));
            StoreException refused =
                    assertThrows(StoreException.class, () -> stores.unpack(cut, top.resolve("cut")));
            assertEquals(Trouble.DAMAGED, refused.trouble());
            assertFalse(Files.exists(top.resolve("cut")));
        }
    }

    @Test
    void aChangedReasonIsFound() throws Exception {
        Path changed = changed(PackFormat.JOURNAL, "spring list", "autumn list");
        StoreException refused = assertThrows(StoreException.class, () -> stores.read(changed));
        assertEquals(Trouble.DAMAGED, refused.trouble());
        assertTrue(refused.getMessage().contains("Entry 1"), refused.getMessage());
    }

    @Test
    void aChangedOriginalIsFound() throws Exception {
        Original fleet;
        try (ProjectSource source = stores.read(packed)) {
            fleet = source.journal().state().files().get(0);
        }
        Path changed = changed(PackFormat.ORIGINALS + fleet.sha256(), "K-1", "K-9");
        assertThrows(StoreException.class, () -> stores.unpack(changed, top.resolve("changed")));
        assertFalse(Files.exists(top.resolve("changed")));
    }

    @Test
    void aFileOfANewerProgramIsNamed() throws Exception {
        Path newer = changed(PackFormat.HEAD, "\"slotledgerProject\":1", "\"slotledgerProject\":2");
        assertEquals(Trouble.NEWER, assertThrows(StoreException.class, () -> stores.read(newer)).trouble());
    }

    /** The packed file with a text in one of its members replaced. */
    private Path changed(String member, String from, String to) throws IOException {
        Map<String, byte[]> members = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(packed.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                members.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        String text = new String(members.get(member), StandardCharsets.UTF_8);
        assertTrue(text.contains(from), text);
        members.put(member, text.replace(from, to).getBytes(StandardCharsets.UTF_8));
        Path file = top.resolve("changed.slotledger");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> each : members.entrySet()) {
                zip.putNextEntry(new ZipEntry(each.getKey()));
                zip.write(each.getValue());
            }
        }
        return file;
    }
}
