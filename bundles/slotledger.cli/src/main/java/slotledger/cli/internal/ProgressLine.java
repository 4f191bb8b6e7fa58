package slotledger.cli.internal;

import java.io.PrintStream;
import java.util.Locale;
import slotledger.model.task.Progress;

/** Shows progress in one line of a terminal that is overwritten; shows nothing in a pipe. */
final class ProgressLine implements Progress, AutoCloseable {

    private static final int WIDTH = 24;
    private static final long PAUSE_NS = 80_000_000L;

    private final PrintStream stream;
    private final boolean shown;
    private long last;
    private int length;
    private String step = "";

    ProgressLine(Console console) {
        this.stream = console.err();
        this.shown = console.isTerminal();
    }

    @Override
    public synchronized void step(String what, double done) {
        long now = System.nanoTime();
        if (!shown || what.isEmpty() || what.equals(step) && now - last < PAUSE_NS) {
            return;
        }
        last = now;
        step = what;
        String bar = "";
        if (done >= 0) {
            int full = (int) Math.round(Math.min(1, done) * WIDTH);
            bar = "[" + "#".repeat(full) + ".".repeat(WIDTH - full) + "] ";
        }
        show(bar + what.substring(0, 1).toUpperCase(Locale.ROOT) + what.substring(1));
    }

    private void show(String text) {
        stream.print("\r" + text + " ".repeat(Math.max(0, length - text.length())));
        stream.flush();
        length = text.length();
    }

    /** On a terminal the interrupt key ends the whole program; the desk then takes unfinished folders away. */
    @Override
    public boolean isCancelled() {
        return Thread.currentThread().isInterrupted();
    }

    /** Clears the line. */
    @Override
    public synchronized void close() {
        if (shown && length > 0) {
            show("");
            stream.print("\r");
            stream.flush();
        }
    }
}
