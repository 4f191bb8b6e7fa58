package slotledger.store.internal;

import java.nio.file.Path;
import slotledger.store.StoreException;

/** Sees a project in a folder by its mark, so that nobody who has the database open is in the way. */
final class MarkEye implements Watching.Eye {

    private static final int BETWEEN_LOOKS_MS = 500;

    private final Path folder;

    MarkEye(Path folder) {
        this.folder = folder;
    }

    @Override
    public long look() throws StoreException, InterruptedException {
        Thread.sleep(BETWEEN_LOOKS_MS);
        return Mark.read(folder).entries();
    }

    @Override
    public void close() {
        // Nothing stays open.
    }
}
