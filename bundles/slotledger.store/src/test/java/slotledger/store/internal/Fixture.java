package slotledger.store.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Fact;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;

/** Small projects. */
final class Fixture {

    static final Author ANNA = new Author("anna", "spring list");
    static final Clock NOON = Clock.fixed(Instant.parse("2026-11-28T12:00:00.123456Z"), ZoneOffset.UTC);

    private Fixture() {
    }

    static DefaultProjectStores stores() {
        return new DefaultProjectStores(NOON, Schema.today(), Duration.ofMillis(300));
    }

    /** A project of two parts, one of whose files is larger than a piece. */
    static Path project(Path top) throws IOException, StoreException {
        Path folder = top.resolve("school");
        stores().create(folder, "School", files(top), ANNA);
        return folder;
    }

    static Map<Part, Map<String, Path>> files(Path top) throws IOException {
        Path fleet = Files.writeString(top.resolve("fleet.csv"), "tag;model\nK-1;KB-510\n");
        byte[] large = new byte[1_300_000];
        for (int i = 0; i < large.length; i++) {
            large[i] = (byte) (i * 31 + i / 7);
        }
        Path offers = Files.write(top.resolve("offers.xlsx"), large);
        return Map.of(Part.FLEET, Map.of("fleet.csv", fleet), Part.OFFERS, Map.of("offers.xlsx", offers));
    }

    /** Brings in another fleet. */
    static void importFleet(ProjectStore store, Path top, String text) throws IOException, StoreException {
        Path file = Files.writeString(top.resolve("another.csv"), text);
        Original original = store.keep("fleet.csv", file);
        store.append(new Change.Imported(Map.of(Part.FLEET, List.of(original))), ANNA);
    }

    static Change correction(String machine, String value) {
        return new Change.Decided(new Decision.Correction(new AssetTag(machine), Fact.ROLE, "ofice", value));
    }
}
