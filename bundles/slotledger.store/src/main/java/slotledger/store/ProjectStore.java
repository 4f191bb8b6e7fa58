package slotledger.store;

import java.nio.file.Path;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Original;

/** A project that is open for changes. */
public interface ProjectStore extends ProjectSource {

    /** Takes in the entries that others wrote since this was opened; only those are read. */
    void refresh() throws StoreException;

    /**
     * Takes in a file, byte for byte. It stays only if an entry is appended before the project is closed; until then
     * the file must stay as it is.
     *
     * @param name its path in the project's folder of plain files
     */
    Original keep(String name, Path file) throws StoreException;

    /**
     * Writes an entry. When this returns, the entry and all that was kept for it are on the disk. Entries that others
     * wrote meanwhile are no hindrance, and are in the journal afterwards, unless one is about the same.
     *
     * @param basis number of the last entry that whoever decides this has seen
     * @throws StoreException where nothing was written; of kind CHANGED where somebody else changed the same after that
     *                        entry: the message says who, what and when. Only of kind AWAY may it be that the entry was
     *                        written, and the message then says so
     */
    Entry append(Change change, Author author, long basis) throws StoreException;

    /** The same, decided knowing the whole journal of this store. */
    default Entry append(Change change, Author author) throws StoreException {
        return append(change, author, journal().last().number());
    }
}
