package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Savepoint;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** A project in a folder: the database, and the mark beside it. */
final class FolderStore extends SqlStore {

    private final Path folder;
    private final Connection connection;
    private final SqlProject project;
    private final boolean writable;

    private FolderStore(Path folder, Mark mark, Connection connection, Journal journal, Clock clock,
            Set<String> own, boolean writable) {
        super(folder.toString(), mark.id(), journal, clock, own);
        this.folder = folder;
        this.connection = connection;
        this.project = new SqlProject(connection, mark.id());
        this.writable = writable;
    }

    /** @param known what was read of its journal before */
    static FolderStore open(Path folder, H2File file, Clock clock, Set<String> own, Optional<Journal> known)
            throws StoreException {
        Mark mark = Mark.read(folder);
        file.mustHold(mark);
        Connection connection = file.open();
        try {
            Journal journal = Entries.read(
                    known, new SqlProject(connection, mark.id())::entriesAfter, folder.toString());
            return new FolderStore(folder, mark, connection, journal, clock, own, file.isWritable());
        } catch (SQLException problem) {
            close(connection);
            throw new StoreException(Trouble.DAMAGED, "The project " + folder + " can't be read: "
                    + problem.getMessage() + " Take your last backup.", problem);
        } catch (StoreException problem) {
            close(connection);
            throw problem;
        }
    }

    @Override
    public Original keep(String name, Path file) throws StoreException {
        mustBeWritable();
        Original original = identify(name, file);
        try {
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

    @Override
    boolean add(EntryRow row, List<Original> originals) throws StoreException {
        try {
            for (Original original : originals) {
                if (!project.holds(original)) {
                    throw new IllegalArgumentException("The original (%s) must be kept first.".formatted(original));
                }
            }
            // What was kept stays where somebody else in this program was faster.
            Savepoint kept = connection.setSavepoint();
            try {
                project.add(row);
            } catch (SQLException problem) {
                if (UNIQUE_VIOLATION.equals(problem.getSQLState())) {
                    connection.rollback(kept);
                    return false;
                }
                throw problem;
            }
            connection.commit();
        } catch (SQLException problem) {
            throw unwritable(problem);
        }
        settle(row);
        mark(row);
        return true;
    }

    @Override
    List<EntryRow> rowsAfter(long number) throws StoreException {
        try {
            return project.entriesAfter(number);
        } catch (SQLException problem) {
            throw unreadable(problem);
        }
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
    private void mark(EntryRow row) {
        try {
            new Mark(id(), row.number(), row.seal()).write(folder);
        } catch (IOException later) {
            // The next entry tries again.
        }
    }

    @Override
    public List<EntryRow> rows() throws StoreException {
        return rowsAfter(0);
    }

    @Override
    public void copy(Original original, OutputStream target) throws StoreException, IOException {
        try {
            if (!project.copy(original, target)) {
                throw spoilt(original);
            }
        } catch (SQLException problem) {
            throw unreadable(problem);
        }
    }

    private StoreException unreadable(SQLException problem) {
        return new StoreException(Trouble.DAMAGED, "The project " + folder + " can't be read: " + problem.getMessage()
                + " Take your last backup.", problem);
    }

    @Override
    void mustBeWritable() throws StoreException {
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
