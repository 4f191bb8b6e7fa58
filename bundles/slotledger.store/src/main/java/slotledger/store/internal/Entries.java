package slotledger.store.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Makes a journal of rows, and believes none whose seal doesn't fit. */
final class Entries {

    private Entries() {
    }

    /** @param where the project, for messages */
    static Journal journal(List<EntryRow> rows, String where) throws StoreException {
        List<Entry> entries = read(rows, "", where);
        try {
            return new Journal(entries);
        } catch (IllegalArgumentException broken) {
            throw new StoreException(Trouble.DAMAGED, "The journal of the project " + where + " is not whole: "
                    + broken.getMessage() + " Take a copy from your last backup.", broken);
        }
    }

    /** A journal with rows that were written after it. */
    static Journal more(Journal journal, List<EntryRow> rows, String where) throws StoreException {
        List<Entry> entries = new ArrayList<>(journal.entries());
        entries.addAll(read(rows, journal.last().seal(), where));
        return new Journal(entries);
    }

    /**
     * Reads a journal of which some may be known.
     *
     * @param known what was read and checked before; believed where the seal of its last entry still stands, for a seal
     *              covers all entries before it
     */
    static <X extends Exception> Journal read(Optional<Journal> known, RowsAfter<X> rows, String where)
            throws X, StoreException {
        if (known.isPresent()) {
            Entry last = known.get().last();
            List<EntryRow> since = rows.after(last.number() - 1);
            if (!since.isEmpty() && since.get(0).seal().equals(last.seal())) {
                return more(known.get(), since.subList(1, since.size()), where);
            }
        }
        return journal(rows.after(0), where);
    }

    /**
     * Where rows come from.
     *
     * @param <X> what can go wrong there
     */
    @FunctionalInterface
    interface RowsAfter<X extends Exception> {
        List<EntryRow> after(long number) throws X;
    }

    private static List<Entry> read(List<EntryRow> rows, String sealBefore, String where) throws StoreException {
        List<Entry> entries = new ArrayList<>();
        String seal = sealBefore;
        for (EntryRow row : rows) {
            if (!row.sealAfter(seal).equals(row.seal())) {
                throw new StoreException(Trouble.DAMAGED, "Entry " + row.number() + " of the project " + where
                        + " is not as it was written, or one before it is missing. Take a copy from your last backup.");
            }
            seal = row.seal();
            try {
                entries.add(row.entry());
            } catch (RuntimeException unknown) {
                throw new StoreException(Trouble.NEWER, "Entry " + row.number() + " of the project " + where
                        + " is not understood: " + unknown.getMessage() + " Use the Slotledger that wrote it.",
                        unknown);
            }
        }
        return entries;
    }
}
