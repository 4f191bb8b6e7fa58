package slotledger.store.internal;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import slotledger.model.project.Original;
import slotledger.store.ProjectSource;
import slotledger.store.StoreException;

/** A project whose entries and originals can be taken elsewhere exactly as they are kept. */
interface Rows extends ProjectSource {

    /** The entries as they are kept. */
    List<EntryRow> rows() throws StoreException;

    /** Writes the bytes of an original; fails where they are not those that were kept. */
    void copy(Original original, OutputStream target) throws StoreException, IOException;
}
