package slotledger.store.internal;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** A project in a folder: the database, and the mark beside it. */
final class FolderStore implements ProjectStore {

    /** What the column takes. */
    private static final int LONGEST_CHANGE = 1_000_000;
    /** SQL standard, the same in H2 and PostgreSQL. */
    private static final String UNIQUE_VIOLATION = "23505";

    private final Path folder;
    private final UUID id;
    private final Connection connection;
    private final SqlProject project;
    private final Clock clock;
    private final boolean writable;
    private Journal journal;

    private FolderStore(Path folder, UUID id, Connection connection, Journal journal, Clock clock, boolean writable) {
        this.folder = folder;
        this.id = id;
        this.connection = connection;
        this.project = new SqlProject(connection, id);
        this.journal = journal;
        this.clock = clock;
        this.writable = writable;
    }

    /** @param known entries that were read and checked before; may be empty */
    static FolderStore open(Path folder, H2File file, Clock clock, List<Entry> known) throws StoreException {
        Mark mark = Mark.read(folder);
        Connection connection = file.open();
        try {
            Journal journal = journal(folder, mark, new SqlProject(connection, mark.id()), known);
            return new FolderStore(folder, mark.id(), connection, journal, clock, file.isWritable());
        } catch (SQLException problem) {
            close(connection);
            throw unreadable(folder, problem);
        } catch (StoreException problem) {
            close(connection);
            throw problem;
        }
    }

    private static Journal journal(Path folder, Mark mark, SqlProject project, List<Entry> known)
            throws SQLException, StoreException {
        if (!known.isEmpty()) {
            Entry last = known.get(known.size() - 1);
            List<EntryRow> rows = project.entries(last.number() - 1);
            if (!rows.isEmpty() && rows.get(0).seal().equals(last.seal())) {
                Journal journal = Entries.journal(known, rows.subList(1, rows.size()), folder.toString());
                mustReach(mark, journal.entries().stream().map(Entry::seal).toList(), folder);
                return journal;
            }
        }
        List<EntryRow> rows = project.entries(0);
        mustReach(mark, rows.stream().map(EntryRow::seal).toList(), folder);
        return Entries.journal(rows, folder.toString());
    }

    private static void mustReach(Mark mark, List<String> seals, Path folder) throws StoreException {
        if (seals.size() < mark.entries() || !seals.get((int) mark.entries() - 1).equals(mark.seal())) {
            throw new StoreException(Trouble.DAMAGED, "The project " + folder + " had " + mark.entries()
                    + " entries, and " + seals.size() + " that fit are found. Maybe it was copied only in part, or "
                    + "files of two copies were mixed: copy the whole folder again, or take your last backup.");
        }
    }

    @Override
    public void refresh() throws StoreException {
        try {
            List<EntryRow> rows = project.entries(journal.last().number());
            if (!rows.isEmpty()) {
                journal = Entries.journal(journal.entries(), rows, folder.toString());
            }
        } catch (SQLException problem) {
            throw unreadable(folder, problem);
        }
    }

    @Override
    public UUID id() {
        return id;
    }

    @Override
    public Journal journal() {
        return journal;
    }

    @Override
    public Original keep(String name, Path file) throws StoreException {
        mustBeWritable();
        try {
            Original original = identify(name, file);
            if (!project.holds(original)) {
                try (InputStream bytes = Files.newInputStream(file)) {
                    project.keep(original, bytes);
                }
            }
            return original;
        } catch (IOException problem) {
            rollBack();
            throw new StoreException(Trouble.MISSING, "The file " + file + " can't be read: " + problem.getMessage()
                    + ". Nothing was saved.", problem);
        } catch (SQLException problem) {
            throw unwritable(problem);
        }
    }

    private static Original identify(String name, Path file) throws IOException {
        try (DigestInputStream bytes = new DigestInputStream(Files.newInputStream(file), Digests.sha256())) {
            long size = bytes.transferTo(OutputStream.nullOutputStream());
            return new Original(name, Digests.hex(bytes.getMessageDigest()), size);
        }
    }

    @Override
    public Entry append(Change change, Author author) throws StoreException {
        mustBeWritable();
        mustFit(change);
        EntryRow row = EntryRow.of(journal.last().number() + 1, clock.instant(), author, change,
                journal.last().seal());
        if (row.change().length() > LONGEST_CHANGE) {
            throw new StoreException(Trouble.REFUSED, "That is too much for one entry. Bring the files part by part.");
        }
        try {
            for (Original original : Originals.of(change)) {
                if (!project.holds(original)) {
                    throw new IllegalArgumentException("The original (%s) must be kept first.".formatted(original));
                }
            }
            project.add(row);
            connection.commit();
        } catch (SQLException problem) {
            if (UNIQUE_VIOLATION.equals(problem.getSQLState())) {
                rollBack();
                throw new StoreException(Trouble.CHANGED, "The project " + folder + " was changed by somebody else "
                        + "meanwhile. Nothing was saved; look at its history and do it again.", problem);
            }
            throw unwritable(problem);
        }
        settle(row);
        List<Entry> entries = new ArrayList<>(journal.entries());
        entries.add(row.entry());
        journal = new Journal(entries);
        mark();
        return journal.last();
    }

    private void settle(EntryRow row) throws StoreException {
        try {
            H2File.settle(connection);
        } catch (SQLException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "It is not sure that entry " + row.number() + " of the project"
                    + " " + folder + " is on the disk: " + problem.getMessage() + " Look at its history.", problem);
        }
    }

    /** An older mark is as true as a new one, it only tells less; so a failure here takes nothing back. */
    private void mark() {
        try {
            new Mark(id, journal.last().number(), journal.last().seal()).write(folder);
        } catch (IOException later) {
            // The next entry tries again.
        }
    }

    private void mustFit(Change change) throws StoreException {
        if (change instanceof Change.TakenBack back && !journal.canBeTakenBack(back.entry())) {
            throw new StoreException(Trouble.REFUSED, "Entry " + back.entry() + " can't be taken back: it is no change,"
                    + " or was taken back already. The history shows what holds.");
        }
        if (change instanceof Change.Restored again && !journal.canBeRestored(again.entry())) {
            throw new StoreException(Trouble.REFUSED, "Entry " + again.entry() + " can't be restored: it was not taken "
                    + "back. The history shows what holds.");
        }
    }

    @Override
    public void write(Original original, Path file) throws StoreException {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            try (OutputStream target = new BufferedOutputStream(
                    Files.newOutputStream(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
                copy(original, target);
            }
        } catch (IOException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The file " + file + " can't be written: "
                    + problem.getMessage() + ".", problem);
        }
    }

    /** The entries as they are kept. */
    List<EntryRow> rows() throws StoreException {
        try {
            return project.entries(0);
        } catch (SQLException problem) {
            throw unreadable(folder, problem);
        }
    }

    private static StoreException unreadable(Path folder, SQLException problem) {
        return new StoreException(Trouble.DAMAGED, "The project " + folder + " can't be read: "
                + problem.getMessage() + " Take your last backup.", problem);
    }

    void copy(Original original, OutputStream target) throws StoreException, IOException {
        try {
            if (project.copy(original, target)) {
                return;
            }
        } catch (SQLException problem) {
            throw new StoreException(Trouble.DAMAGED, "The original " + original.name() + " of the project " + folder
                    + " can't be read: " + problem.getMessage() + " Take your last backup.", problem);
        }
        throw new StoreException(Trouble.DAMAGED, "The original " + original.name() + " of the project " + folder
                + " is no longer as it was brought in. Take your last backup.");
    }

    private void mustBeWritable() throws StoreException {
        if (!writable) {
            throw new StoreException(Trouble.UNWRITABLE, "The project " + folder + " can be read but not changed: you "
                    + "may not write there. Ask for the right to write, or copy it.");
        }
    }

    private StoreException unwritable(SQLException problem) {
        rollBack();
        return new StoreException(Trouble.UNWRITABLE, "The project " + folder + " can't be written: "
                + problem.getMessage() + " Nothing was saved. Check that its disk has room.", problem);
    }

    private void rollBack() {
        try {
            connection.rollback();
        } catch (SQLException gone) {
            // Without a connection nothing is committed either.
        }
    }

    @Override
    public void close() throws StoreException {
        rollBack();
        try {
            connection.close();
        } catch (SQLException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The project " + folder + " didn't close well: "
                    + problem.getMessage() + " Its entries are kept; look at its history.", problem);
        }
    }

    private static void close(Connection connection) {
        try {
            connection.close();
        } catch (SQLException alsoBroken) {
            // What is thrown already says more.
        }
    }
}
