package slotledger.intake.internal.sheet;

import slotledger.model.task.Progress;

/** Turns bytes taken from a file into reports of progress, and asks whether to stop. */
final class Meter {

    private static final long STRIDE = 1 << 18;

    private final Progress progress;
    private final String what;
    private final long total;
    private long done;
    private long reported;

    /**
     * Begins at nothing done.
     *
     * @param total bytes there are to take; zero or less where unknown
     */
    Meter(Progress progress, String what, long total) {
        this.progress = progress;
        this.what = what;
        this.total = total;
        progress.check();
        progress.step(what, total > 0 ? 0 : -1);
    }

    void add(long bytes) {
        done += bytes;
        if (done - reported >= STRIDE) {
            reported = done;
            progress.check();
            progress.step(what, total > 0 ? Math.min(1.0, (double) done / total) : -1);
        }
    }

    void finish() {
        progress.check();
        progress.step(what, 1);
    }
}
