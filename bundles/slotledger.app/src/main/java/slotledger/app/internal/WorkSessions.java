package slotledger.app.internal;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import slotledger.app.DeskException;
import slotledger.export.PlanFiles;
import slotledger.store.ProjectStores;
import slotledger.store.StoreException;

/** The projects that work is recorded in, each open only while something happens. */
final class WorkSessions implements AutoCloseable {

    private static final long LOOK_AGAIN_MS = 250;

    private final ProjectStores stores;
    private final PlanFiles files;
    private final Map<Path, WorkSession> sessions = new ConcurrentHashMap<>();
    private ScheduledExecutorService closer;

    WorkSessions(ProjectStores stores, PlanFiles files) {
        this.stores = stores;
        this.files = files;
    }

    <T> T with(Path folder, WorkSession.Use<T> use) throws DeskException {
        WorkSession session = sessions.computeIfAbsent(folder.toAbsolutePath().normalize(),
                path -> new WorkSession(stores, files, folder));
        startCloser();
        try {
            return session.with(use);
        } catch (StoreException problem) {
            throw DefaultProjectDesk.said(problem);
        }
    }

    private synchronized void startCloser() {
        if (closer == null) {
            closer = Executors.newSingleThreadScheduledExecutor(task -> {
                Thread thread = new Thread(task, "slotledger-closes-projects");
                thread.setDaemon(true);
                return thread;
            });
            closer.scheduleWithFixedDelay(this::closeIdle, LOOK_AGAIN_MS, LOOK_AGAIN_MS, TimeUnit.MILLISECONDS);
        }
    }

    private void closeIdle() {
        for (WorkSession session : sessions.values()) {
            try {
                session.closeIfIdle();
            } catch (StoreException keptAnyway) {
                // What was recorded is on the disk since its entry was written.
            }
        }
    }

    @Override
    public synchronized void close() {
        if (closer != null) {
            closer.shutdownNow();
            closer = null;
        }
        for (WorkSession session : sessions.values()) {
            try {
                session.close();
            } catch (StoreException keptAnyway) {
                // What was recorded is on the disk since its entry was written.
            }
        }
        sessions.clear();
    }
}
