package slotledger.workbench.internal.session;

import org.eclipse.core.runtime.IProgressMonitor;
import slotledger.model.task.Progress;

/** Shows the progress of long work in a job's bar: each step fills it anew, for steps don't tell how many they are. */
final class JobProgress implements Progress {

    private static final int UNITS = 1000;

    private final String name;
    private final IProgressMonitor monitor;
    private String step = "";
    private int shown;

    JobProgress(String name, IProgressMonitor monitor) {
        this.name = name;
        this.monitor = monitor;
    }

    @Override
    public synchronized void step(String what, double done) {
        if (!what.equals(step)) {
            step = what;
            shown = 0;
            monitor.beginTask(name, done < 0 ? IProgressMonitor.UNKNOWN : UNITS);
            monitor.subTask(what);
        }
        int reached = (int) Math.min(UNITS, done * UNITS);
        if (reached > shown) {
            monitor.worked(reached - shown);
            shown = reached;
        }
    }

    @Override
    public boolean isCancelled() {
        return monitor.isCanceled();
    }
}
