package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.model.project.Part;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

class FolderStoreTest extends ProjectStoreContract {

    private final DefaultProjectStores stores = Fixture.stores();
    private final DefaultProjectStores others = Fixture.stores();

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
        return new DefaultProjectStores(clock, Schema.today(), Duration.ofSeconds(1));
    }

    @Override
    Path project(String name, Map<Part, Map<String, Path>> files) throws Exception {
        stores.create(top.resolve(name), "School", files, Fixture.ANNA);
        return top.resolve(name);
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

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
