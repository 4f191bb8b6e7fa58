package slotledger.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutsideDataTest {

    @Test
    void theFolderIsFoundFromAnyDepthBelowIt(@TempDir Path top) throws IOException {
        Path outside = Files.createDirectories(top.resolve("shared/outside"));
        Path deep = Files.createDirectories(top.resolve("project/bundles/one/target"));
        assertEquals(outside, OutsideData.find(deep, "").normalize());
    }

    @Test
    void aMissingFileIsNotFound(@TempDir Path top) throws IOException {
        Files.createDirectories(top.resolve("shared/outside"));
        assertNull(OutsideData.find(top, "no-such-file.csv"));
    }
}
