package slotledger.ortools.internal;

import java.util.function.Supplier;
import slotledger.model.task.Progress;

/** Asks now and then whether the user wants to stop, and passes it on to a running search. */
public final class Canceller {

    private static final long PAUSE_MILLIS = 100;

    private Canceller() {
    }

    /** Runs the search, and calls stop as soon as the user wants to. */
    public static <T> T run(Supplier<T> search, Runnable stop, Progress progress) {
        Thread watcher = new Thread(() -> watch(stop, progress), "slotledger-solver-watch");
        watcher.setDaemon(true);
        watcher.start();
        try {
            return search.get();
        } finally {
            watcher.interrupt();
        }
    }

    private static void watch(Runnable stop, Progress progress) {
        try {
            while (true) {
                Thread.sleep(PAUSE_MILLIS);
                if (progress.isCancelled()) {
                    stop.run();
                }
            }
        } catch (InterruptedException e) {
            // The search is over.
        }
    }
}
