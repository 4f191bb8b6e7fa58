package slotledger.workbench.internal.session;

import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import slotledger.app.DeskException;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;

/**
 * One long step at the desk, with progress and cancel. Its result is handed over on the window's thread; a failure is
 * shown by the workbench.
 *
 * @param <T> what the step gives
 */
public final class DeskJob<T> extends Job {

    /**
     * The step itself.
     *
     * @param <T> what it gives
     */
    @FunctionalInterface
    public interface Step<T> {
        T run(Progress progress) throws DeskException;
    }

    private final Step<T> step;
    private final Executor window;
    private final Consumer<T> taker;

    public DeskJob(String name, Step<T> step, Executor window, Consumer<T> taker) {
        super(name);
        this.step = step;
        this.window = window;
        this.taker = taker;
        setUser(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            T result = step.run(new JobProgress(getName(), monitor));
            window.execute(() -> taker.accept(result));
            return Status.OK_STATUS;
        } catch (CancelledException e) {
            return Status.CANCEL_STATUS;
        } catch (DeskException e) {
            return Status.error(e.getMessage(), e);
        }
    }
}
