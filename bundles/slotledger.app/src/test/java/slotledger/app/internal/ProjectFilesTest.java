package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.app.Project;

class ProjectFilesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    @TempDir
    private Path folder;

    @Test
    void filesAreFoundByTheStartOfTheirNamesWhateverTheirCase() throws Exception {
        touch("Fleet North.xlsx", "fleet-south.csv", "offers.xlsx", "SHELF.csv", "policy.yaml", "notes.docx",
                "fleet.pdf");
        Files.createDirectory(folder.resolve("boards"));
        Project project = ProjectFiles.in(folder, DAY);
        assertEquals(names("Fleet North.xlsx", "fleet-south.csv"), project.inventories());
        assertEquals(names("offers.xlsx"), project.offers());
        assertEquals(names("SHELF.csv"), project.shelves());
        assertEquals(Optional.of(folder.resolve("policy.yaml")), project.policy());
        assertEquals(names("boards"), project.boards());
        assertEquals(Optional.empty(), project.mapping());
        assertEquals(DAY, project.date());
    }

    @Test
    void firmwareIsAnInventoryAndAFolderOfImagesAShelf() throws Exception {
        touch("fleet.csv", "firmware-list.txt", "firmware.zip", "shelf.csv");
        Files.createDirectory(folder.resolve("firmware"));
        Files.createDirectory(folder.resolve("shelf"));
        Project project = ProjectFiles.in(folder, DAY);
        assertEquals(names("firmware", "firmware-list.txt", "firmware.zip", "fleet.csv"), project.inventories());
        assertEquals(names("shelf", "shelf.csv"), project.shelves());
    }

    @Test
    void aFolderWithoutAnInventorySaysHowToGetOne() throws Exception {
        touch("offers.xlsx");
        String message = assertThrows(DeskException.class, () -> ProjectFiles.in(folder, DAY)).getMessage();
        assertTrue(message.contains("fleet") && message.contains("template"), message);
    }

    @Test
    void twoPoliciesAreRefusedByName() throws Exception {
        touch("fleet.csv", "policy.yaml", "policy-old.xlsx");
        String message = assertThrows(DeskException.class, () -> ProjectFiles.in(folder, DAY)).getMessage();
        assertTrue(message.contains("policy-old.xlsx") && message.contains("policy.yaml"), message);
    }

    @Test
    void aMissingFolderIsNamed() {
        String message =
                assertThrows(DeskException.class, () -> ProjectFiles.in(folder.resolve("gone"), DAY)).getMessage();
        assertTrue(message.contains("gone"), message);
    }

    private void touch(String... names) throws Exception {
        for (String name : names) {
            Files.createFile(folder.resolve(name));
        }
    }

    private List<Path> names(String... names) {
        return List.of(names).stream().map(folder::resolve).toList();
    }
}
