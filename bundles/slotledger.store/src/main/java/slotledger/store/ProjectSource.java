package slotledger.store;

import java.nio.file.Path;
import java.util.UUID;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;

/** A project that is open for reading. For one thread; others wait until it is closed. */
public interface ProjectSource extends AutoCloseable {

    /** The same for all copies of a project. */
    UUID id();

    /** All entries, whose seals were checked. */
    Journal journal();

    /**
     * Writes an original into a new file, byte for byte.
     *
     * @throws StoreException also where the bytes are no longer those that were kept
     */
    void write(Original original, Path file) throws StoreException;

    @Override
    void close() throws StoreException;
}
