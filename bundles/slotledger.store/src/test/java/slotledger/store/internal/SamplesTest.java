package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.ProjectState;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;

/**
 * Projects as each released form left them: they open for ever. A new form gets a new folder of samples; those that are
 * there are never made again.
 */
class SamplesTest {

    private static final List<String> KINDS = List.of("created", "imported", "corrected", "pinned", "pinned",
            "imported", "taken back", "imported", "muted", "restored", "taken back", "planned");

    @TempDir
    Path top;

    private final DefaultProjectStores stores = Fixture.stores();

    @Test
    void aProjectOfTheFirstFormOpensAndGoesOn() throws Exception {
        Path folder = Files.createDirectory(top.resolve("school"));
        sample("form-1/project.mv.db", folder.resolve("project.mv.db"));
        sample("form-1/project.mark", folder.resolve("project.mark"));
        try (ProjectStore store = stores.open(folder)) {
            mustBeTheSample(store);
            store.append(new Change.Restored(5), Fixture.ANNA);
            assertEquals(4, store.journal().state().decisions().size());
        }
    }

    @Test
    void aPackedProjectOfTheFirstFormIsReadAndUnpacked() throws Exception {
        Path packed = sample("form-1/school.slotledger", top.resolve("school.slotledger"));
        try (ProjectSource source = stores.read(packed)) {
            mustBeTheSample(source);
        }
        stores.unpack(packed, top.resolve("again"));
        try (ProjectSource source = stores.read(top.resolve("again"))) {
            for (Original original : source.journal().state().files()) {
                source.write(original, top.resolve("again-out").resolve(original.name()));
            }
        }
    }

    private void mustBeTheSample(ProjectSource source) throws Exception {
        Journal journal = source.journal();
        assertEquals(KINDS, journal.entries().stream().map(Entry::change)
                .map(change -> ChangeJson.write(change).kind()).toList());
        assertEquals("M\u00e4rz", journal.entries().get(5).author().why());
        assertEquals("ben", journal.entries().get(3).author().who());
        ProjectState state = journal.state();
        assertEquals(Map.of(Part.FLEET, 2, Part.BOARDS, 1, Part.POLICY, 1), state.parts().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, part -> part.getValue().number())));
        assertEquals(1, state.plans().size());
        assertEquals(3, state.decisions().size());
        source.write(state.parts().get(Part.FLEET).files().get(0), top.resolve("fleet.csv"));
        assertTrue(Files.readString(top.resolve("fleet.csv")).contains("K-2;Kestrin;KB-510;Main;103;lab"));
    }

    private static Path sample(String name, Path file) throws IOException {
        try (InputStream sample = SamplesTest.class.getResourceAsStream(name)) {
            Files.copy(sample, file);
        }
        return file;
    }
}
