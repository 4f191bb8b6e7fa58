package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.project.Original;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** What can go wrong around a project: it is said in words, and nothing is lost. */
class TroubleTest {

    @TempDir
    Path top;

    private final DefaultProjectStores stores = Fixture.stores();
    private Path folder;

    @BeforeEach
    void makeAProject() throws Exception {
        folder = Fixture.project(top);
        try (ProjectStore store = stores.open(folder)) {
            for (int i = 0; i < 30; i++) {
                store.append(Fixture.correction("K-" + i, "office"), Fixture.ANNA);
            }
        }
    }

    @Test
    void aDatabaseCutAnywhereIsRefusedOrWholeButNeverSilentlyOlder() throws Exception {
        byte[] whole = Files.readAllBytes(folder.resolve(H2File.NAME));
        int refused = 0;
        for (int part = 0; part < 32; part++) {
            Path copy = copy("cut-" + part);
            Files.write(copy.resolve(H2File.NAME), Arrays.copyOf(whole, (int) ((long) whole.length * part / 32)));
            try (ProjectSource source = stores.read(copy)) {
                assertEquals(32, source.journal().last().number());
                for (Original original : source.journal().state().files()) {
                    source.write(original, top.resolve("out-" + part).resolve(original.name()));
                }
            } catch (StoreException said) {
                assertEquals(Trouble.DAMAGED, said.trouble(), said.getMessage());
                refused++;
            }
        }
        assertTrue(refused > 5, "cuts into what holds the entries must be noticed, and " + refused + " were");
    }

    @Test
    void aDatabaseFromAnOlderCopyIsNoticed() throws Exception {
        Path older = copy("older");
        try (ProjectStore store = stores.open(folder)) {
            store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA);
        }
        Files.copy(older.resolve(H2File.NAME), folder.resolve(H2File.NAME), StandardCopyOption.REPLACE_EXISTING);
        StoreException said = assertThrows(StoreException.class, () -> stores.read(folder));
        assertEquals(Trouble.DAMAGED, said.trouble());
        assertTrue(said.getMessage().contains("33 entries, and 32"), said.getMessage());
    }

    @Test
    void aMissingFileIsNamed() throws Exception {
        Files.delete(copy("one").resolve(H2File.NAME));
        assertTrue(assertThrows(StoreException.class, () -> stores.read(top.resolve("one"))).getMessage()
                .contains("lacks its file project.mv.db"));
        Files.delete(copy("two").resolve(Mark.NAME));
        assertTrue(assertThrows(StoreException.class, () -> stores.read(top.resolve("two"))).getMessage()
                .contains("project.mark"));
    }

    @Test
    void aMarkThatWasNotWrittenInTimeDoesNoHarm() throws Exception {
        Path mark = Files.copy(folder.resolve(Mark.NAME), top.resolve("mark"));
        try (ProjectStore store = stores.open(folder)) {
            store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA);
        }
        Files.copy(mark, folder.resolve(Mark.NAME), StandardCopyOption.REPLACE_EXISTING);
        try (ProjectStore store = stores.open(folder)) {
            assertEquals(33, store.journal().last().number());
        }
    }

    @Test
    void aProjectThatIsOpenInAnotherProgramIsNotTouched() throws Exception {
        Process child = Child.start("hold", folder);
        try (BufferedReader output = Child.output(child)) {
            assertEquals("32", output.readLine());
            StoreException said = assertThrows(StoreException.class, () -> stores.open(folder));
            assertEquals(Trouble.IN_USE, said.trouble());
            assertTrue(said.getMessage().contains("another program"), said.getMessage());
        } finally {
            child.getOutputStream().close();
            assertTrue(child.waitFor(20, TimeUnit.SECONDS));
        }
        try (ProjectStore store = stores.open(folder)) {
            assertEquals(32, store.journal().last().number());
        }
    }

    @Test
    void whoeverComesSecondWaitsUntilTheFirstHasFinished() throws Exception {
        Process child = Child.start("hold", folder);
        try (BufferedReader output = Child.output(child)) {
            assertEquals("32", output.readLine());
            Thread letGo = new Thread(() -> {
                try {
                    Thread.sleep(300);
                    child.getOutputStream().close();
                } catch (IOException | InterruptedException problem) {
                    throw new IllegalStateException(problem);
                }
            });
            letGo.start();
            try (ProjectStore store = new DefaultProjectStores(Clock.systemUTC(), Schema.today(),
                    Duration.ofSeconds(30)).open(folder)) {
                store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA);
            }
            letGo.join();
        }
    }

    @Test
    void aProjectThatMayNotBeWrittenIsRead() throws Exception {
        assertTrue(folder.toFile().setWritable(false, false));
        assertTrue(folder.resolve(H2File.NAME).toFile().setWritable(false, false));
        assumeFalse(Files.isWritable(folder), "This user may write everywhere, so nothing is read-only for it.");
        try (ProjectStore store = stores.open(folder)) {
            assertEquals(32, store.journal().last().number());
            StoreException said = assertThrows(StoreException.class,
                    () -> store.append(Fixture.correction("K-1", "lab"), Fixture.ANNA));
            assertEquals(Trouble.UNWRITABLE, said.trouble());
            assertTrue(said.getMessage().contains("can be read but not changed"), said.getMessage());
        } finally {
            assertTrue(folder.toFile().setWritable(true));
        }
    }

    @Test
    void aFolderWithASemicolonIsRefusedInWords() {
        StoreException said = assertThrows(StoreException.class,
                () -> stores.create(top.resolve("a;b"), "x", Map.of(), Fixture.ANNA));
        assertTrue(said.getMessage().contains("semicolon"), said.getMessage());
        assertFalse(Files.exists(top.resolve("a;b")));
    }

    private Path copy(String name) throws IOException {
        Path copy = Files.createDirectory(top.resolve(name));
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(file.getFileName()));
            }
        }
        return copy;
    }
}
