package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;

class OutputFolderTest {

    @TempDir
    private Path disk;

    @Test
    void filesAppearUnderTheirFinalNamesAndInTheOrderTheyWereMade() throws Exception {
        assertEquals(
                List.of(disk.resolve("out/b.txt"), disk.resolve("out/sub/a.txt")),
                write(disk.resolve("out"), false, "b.txt", "sub/a.txt"));
        assertEquals("b.txt", Files.readString(disk.resolve("out/b.txt")));
    }

    @Test
    void nothingIsLeftWhereTheWorkIsNotPublished() throws Exception {
        try (OutputFolder output = OutputFolder.prepare(disk.resolve("out"), false)) {
            Files.writeString(output.work().resolve("half.txt"), "half");
        }
        try (Stream<Path> left = Files.list(disk)) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void aFolderThatHoldsSomethingIsRefusedWithoutForce() throws Exception {
        write(disk.resolve("out"), false, "a.txt");
        DeskException refused =
                assertThrows(DeskException.class, () -> OutputFolder.prepare(disk.resolve("out"), false));
        assertEquals(Trouble.EXISTS, refused.trouble());
        assertTrue(refused.getMessage().contains("--force"), refused.getMessage());
    }

    @Test
    void forceReplacesTheFilesOfAnEarlierRun() throws Exception {
        write(disk.resolve("out"), false, "old.txt");
        write(disk.resolve("out"), true, "new.txt");
        assertFalse(Files.exists(disk.resolve("out/old.txt")));
        assertTrue(Files.exists(disk.resolve("out/new.txt")));
    }

    @Test
    void forceNeverTouchesAFileOfTheUser() throws Exception {
        write(disk.resolve("out"), false, "old.txt");
        Files.writeString(disk.resolve("out/notes.txt"), "mine");
        DeskException refused =
                assertThrows(DeskException.class, () -> OutputFolder.prepare(disk.resolve("out"), true));
        assertTrue(refused.getMessage().contains("notes.txt"), refused.getMessage());
        assertEquals("mine", Files.readString(disk.resolve("out/notes.txt")));
        assertTrue(Files.exists(disk.resolve("out/old.txt")));
    }

    @Test
    void aFileInThePlaceOfTheFolderIsRefused() throws Exception {
        Files.writeString(disk.resolve("out"), "a file");
        assertThrows(DeskException.class, () -> OutputFolder.prepare(disk.resolve("out"), true));
    }

    private static List<Path> write(Path folder, boolean force, String... names) throws DeskException, IOException {
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            List<Path> made = Stream.of(names).map(output.work()::resolve).toList();
            for (int i = 0; i < names.length; i++) {
                Files.createDirectories(made.get(i).getParent());
                Files.writeString(made.get(i), names[i]);
            }
            return output.publish(made);
        }
    }
}
