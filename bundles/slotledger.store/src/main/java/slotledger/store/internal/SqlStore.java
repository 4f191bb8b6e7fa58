package slotledger.store.internal;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** What stores of all databases share: how an entry is made, held against what others wrote meanwhile, and added. */
abstract class SqlStore implements ProjectStore, Rows {

    /** SQL standard, the same in H2 and PostgreSQL. */
    static final String UNIQUE_VIOLATION = "23505";

    /** What the column takes. */
    private static final int LONGEST_CHANGE = 1_000_000;

    private final String where;
    private final UUID id;
    private final Clock clock;
    private final Set<String> own;
    private Journal journal;

    /**
     * @param where the project, for messages
     * @param own   seals of the entries that this program wrote; is added to
     */
    SqlStore(String where, UUID id, Journal journal, Clock clock, Set<String> own) {
        this.where = where;
        this.id = id;
        this.journal = journal;
        this.clock = clock;
        this.own = own;
    }

    /**
     * Writes an entry, and what was kept for it.
     *
     * @return false where somebody else wrote an entry of that number; nothing was written then
     */
    abstract boolean add(EntryRow row, List<Original> originals) throws StoreException;

    /** What was written after an entry. */
    abstract List<EntryRow> rowsAfter(long number) throws StoreException;

    abstract void mustBeWritable() throws StoreException;

    final String where() {
        return where;
    }

    @Override
    public final UUID id() {
        return id;
    }

    @Override
    public final Journal journal() {
        return journal;
    }

    @Override
    public final Entry append(Change change, Author author, long basis) throws StoreException {
        mustBeWritable();
        Instant made = clock.instant();
        while (true) {
            Collisions.refuse(journal, change, author, basis, own);
            mustFit(change);
            EntryRow row = EntryRow.of(journal.last().number() + 1, made, author, change, journal.last().seal());
            if (row.change().length() > LONGEST_CHANGE) {
                throw new StoreException(Trouble.REFUSED,
                        "That is too much for one entry. Bring the files part by part.");
            }
            if (add(row, Originals.of(change))) {
                journal = journal.with(row.entry());
                own.add(row.seal());
                return journal.last();
            }
            journal = Entries.more(journal, rowsAfter(journal.last().number()), where);
        }
    }

    @Override
    public final void refresh() throws StoreException {
        List<EntryRow> rows = rowsAfter(journal.last().number());
        if (!rows.isEmpty()) {
            journal = Entries.more(journal, rows, where);
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

    static Original identify(String name, Path file) throws StoreException {
        try (InputStream in = Files.newInputStream(file);
                DigestInputStream bytes = new DigestInputStream(in, Digests.sha256())) {
            long size = bytes.transferTo(OutputStream.nullOutputStream());
            return new Original(name, Digests.hex(bytes.getMessageDigest()), size);
        } catch (IOException problem) {
            throw new StoreException(Trouble.MISSING, "The file " + file + " can't be read: " + problem.getMessage()
                    + ". Nothing was saved.", problem);
        }
    }

    @Override
    public final void write(Original original, Path file) throws StoreException {
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

    final StoreException spoilt(Original original) {
        return new StoreException(Trouble.DAMAGED, "The original " + original.name() + " of the project " + where
                + " is no longer as it was brought in. Take your last backup.");
    }
}
