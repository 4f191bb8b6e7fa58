package slotledger.store.internal;

import java.sql.SQLException;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.Watch;
import slotledger.store.StoreException;

/** Looks at a project on a thread of its own, and tells what is new. */
final class Watching implements Watch {

    private static final int BETWEEN_TRIES_MS = 1_000;

    /** What sees a project. */
    interface Eye extends AutoCloseable {

        /** The number of the last entry; returns at once where it is new, or else within a second. */
        long look() throws StoreException, SQLException, InterruptedException;

        @Override
        void close();
    }

    private final Eye eye;
    private final ProjectListener listener;
    private final Thread thread;
    private volatile boolean closed;
    private long last;
    private boolean away;

    private Watching(Eye eye, long last, ProjectListener listener) {
        this.eye = eye;
        this.last = last;
        this.listener = listener;
        this.thread = new Thread(this::run, "slotledger project watch");
        thread.setDaemon(true);
    }

    /** @param last number of the last entry that is known already */
    static Watch start(Eye eye, long last, ProjectListener listener) {
        Watching watching = new Watching(eye, last, listener);
        watching.thread.start();
        return watching;
    }

    private void run() {
        while (!closed) {
            try {
                look();
            } catch (InterruptedException stop) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        eye.close();
    }

    private void look() throws InterruptedException {
        try {
            long now = eye.look();
            if (away) {
                away = false;
                tell(listener::back);
            }
            if (now > last) {
                last = now;
                tell(() -> listener.changed(now));
            }
        } catch (StoreException | SQLException problem) {
            if (!away) {
                away = true;
                tell(() -> listener.away(problem.getMessage()));
            }
            Thread.sleep(BETWEEN_TRIES_MS);
        }
    }

    private void tell(Runnable what) {
        if (!closed) {
            what.run();
        }
    }

    @Override
    public void close() {
        closed = true;
        thread.interrupt();
    }
}
