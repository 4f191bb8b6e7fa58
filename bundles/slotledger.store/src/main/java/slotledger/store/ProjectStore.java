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
     * Takes in a file, byte for byte. It stays only if an entry is appended before the project is closed.
     *
     * @param name its path in the project's folder of plain files
     */
    Original keep(String name, Path file) throws StoreException;

    /**
     * Writes an entry. When this returns, the entry and all that was kept for it are on the disk.
     *
     * @throws StoreException where nothing was written; of kind CHANGED where somebody else wrote an entry meanwhile
     */
    Entry append(Change change, Author author) throws StoreException;
}
