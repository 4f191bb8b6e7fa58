package slotledger.store.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

class SchemaTest {

    @TempDir
    Path top;

    @Test
    void aProjectOfAnEarlierFormIsBroughtToTodaysAndACopyIsKept() throws Exception {
        Path folder = Fixture.project(top);
        DefaultProjectStores later = stores("create table note (entry bigint primary key, text varchar(99) not null);");
        try (ProjectStore store = later.open(folder)) {
            assertEquals(2, store.journal().last().number());
            store.append(Fixture.correction("K-1", "office"), Fixture.ANNA);
        }
        assertTrue(Files.size(folder.resolve("before-form-2.mv.db")) > 0);
        try (ProjectSource source = later.read(folder)) {
            assertEquals(3, source.journal().last().number());
        }
    }

    @Test
    void aProjectOfALaterFormIsLeftAlone() throws Exception {
        Path folder = Fixture.project(top);
        stores("create table note (entry bigint primary key);").open(folder).close();
        StoreException newer = assertThrows(StoreException.class, () -> Fixture.stores().open(folder));
        assertEquals(Trouble.NEWER, newer.trouble());
    }

    @Test
    void aScriptThatFailsLeavesTheProjectAsItWas() throws Exception {
        Path folder = Fixture.project(top);
        assertThrows(StoreException.class, () -> stores("create table broken (").open(folder));
        try (ProjectSource source = Fixture.stores().read(folder)) {
            assertEquals(2, source.journal().last().number());
        }
    }

    private static DefaultProjectStores stores(String script) {
        Schema schema = new Schema(List.of(Schema.released("1", "journal"), new Schema.Form("2", "note", script)),
                Optional.empty());
        return new DefaultProjectStores(Fixture.NOON, schema, Duration.ofSeconds(1));
    }
}
