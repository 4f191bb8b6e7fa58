package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.model.project.Part;

class PartFilesTest {

    @TempDir
    Path top;

    @Test
    void theFilesOfAFolderAreSortedIntoParts() throws Exception {
        write("fleet.xlsx", "Fleet-2.csv", "policy.yaml", "boards/a.yaml", "boards/more/b.yaml", "notes.txt",
                "fleet.docx");
        Map<Part, Map<String, Path>> parts = PartFiles.in(List.of(top));
        assertEquals(Set.of(Part.FLEET, Part.POLICY, Part.BOARDS), parts.keySet());
        assertEquals(Set.of("fleet.xlsx", "Fleet-2.csv"), parts.get(Part.FLEET).keySet());
        assertEquals(Set.of("boards/a.yaml", "boards/more/b.yaml"), parts.get(Part.BOARDS).keySet());
    }

    @Test
    void aFileOrAFolderOfBoardsStandsForItself() throws Exception {
        write("fleet.xlsx", "offers.csv", "boards/a.yaml");
        assertEquals(Map.of(Part.OFFERS, Map.of("offers.csv", top.resolve("offers.csv")), Part.BOARDS,
                        Map.of("boards/a.yaml", top.resolve("boards/a.yaml"))),
                PartFiles.in(List.of(top.resolve("offers.csv"), top.resolve("boards"))));
    }

    @Test
    void whatIsNotTheProjectsIsNamed() throws Exception {
        write("notes.txt", "empty/readme.md");
        assertTrue(message(top.resolve("notes.txt")).contains("notes.txt"));
        assertTrue(message(top.resolve("empty")).contains("template"));
        assertTrue(message(top.resolve("none.csv")).contains("no file or folder"));
    }

    @Test
    void twoPoliciesAreOneTooMany() throws Exception {
        write("policy.yaml", "policy-new.yaml");
        assertTrue(message(top).contains("one file named policy"), message(top));
    }

    private static String message(Path source) {
        return assertThrows(DeskException.class, () -> PartFiles.in(List.of(source))).getMessage();
    }

    private void write(String... names) throws IOException {
        for (String name : names) {
            Path file = top.resolve(name);
            Files.createDirectories(file.getParent());
            Files.writeString(file, name);
        }
    }
}
