package slotledger.app.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.PasswordPrompt;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.Watch;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.ProjectStores;
import slotledger.store.SharedProjects;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** One project in memory, which every place names; others can be made to write first. */
final class MemoryStores implements ProjectStores {

    private static final Instant NOON = Instant.parse("2026-11-28T12:00:00Z");
    private static final Author ANNA = new Author("anna", "");

    private final List<Entry> entries = new ArrayList<>();
    private final List<Change> others = new ArrayList<>();
    int openings;
    int open;

    /** @param plans how many plans it keeps */
    MemoryStores(int plans) {
        write(new Change.Created("school"), ANNA);
        for (int i = 1; i <= plans; i++) {
            Original file = new Original("plan.json", ("" + i).repeat(64), 10);
            write(new Change.Planned(file, "school", LocalDate.of(2026, 11, 24), 1), ANNA);
        }
    }

    /** Somebody else writes this, after what else they will write, before the next entry of ours. */
    void othersWillWrite(Change change) {
        others.add(change);
    }

    Entry write(Change change, Author author) {
        Entry entry = new Entry(entries.size() + 1, NOON, author, change, "seal " + entries.size());
        entries.add(entry);
        return entry;
    }

    Journal journal() {
        return new Journal(entries);
    }

    @Override
    public boolean isProject(Path place) {
        return true;
    }

    @Override
    public void create(Path folder, String title, Map<Part, Map<String, Path>> files, Author author) {
        throw new UnsupportedOperationException();
    }

    @Override
    public ProjectSource read(Path place) {
        return new Store();
    }

    @Override
    public ProjectStore open(Path folder) {
        return new Store();
    }

    @Override
    public ProjectStore open(Path folder, Journal known) {
        return new Store();
    }

    @Override
    public void pack(Path folder, Path file, boolean force) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void unpack(Path file, Path folder) {
        throw new UnsupportedOperationException();
    }

    @Override
    public Watch watch(Path project, ProjectListener listener) {
        throw new UnsupportedOperationException();
    }

    @Override
    public SharedProjects shared() {
        throw new UnsupportedOperationException();
    }

    @Override
    public void askForPasswords(PasswordPrompt prompt) {
        // Memory has none.
    }

    private final class Store implements ProjectStore {

        private Journal seen = MemoryStores.this.journal();

        Store() {
            openings++;
            open++;
        }

        @Override
        public UUID id() {
            return new UUID(0, 1);
        }

        @Override
        public Journal journal() {
            return seen;
        }

        @Override
        public void refresh() {
            seen = MemoryStores.this.journal();
        }

        @Override
        public Original keep(String name, Path file) {
            throw new UnsupportedOperationException();
        }

        @Override
        public Entry append(Change change, Author author, long basis) throws StoreException {
            while (!others.isEmpty()) {
                MemoryStores.this.write(others.remove(0), new Author("ben", ""));
            }
            if (!MemoryStores.this.journal().aboutTheSameSince(change, basis).isEmpty()) {
                throw new StoreException(Trouble.CHANGED, "Somebody else wrote first.");
            }
            Entry entry = MemoryStores.this.write(change, author);
            refresh();
            return entry;
        }

        @Override
        public void write(Original original, Path file) throws StoreException {
            // What is in it is given by the reader of plan files.
            try {
                Files.createFile(file);
            } catch (IOException problem) {
                throw new StoreException(Trouble.UNWRITABLE, "The file can't be written.", problem);
            }
        }

        @Override
        public void close() {
            open--;
        }
    }
}
