package slotledger.workbench.internal.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;
import slotledger.app.DeskException;

class DeskJobTest {

    private final List<String> taken = new ArrayList<>();

    @Test
    void theResultIsHandedToTheWindow() {
        DeskJob<String> job = new DeskJob<>("job", progress -> "done", Runnable::run, taken::add);
        assertEquals(IStatus.OK, job.run(new NullProgressMonitor()).getSeverity());
        assertEquals(List.of("done"), taken);
    }

    @Test
    void aFailureKeepsTheMessageForPeople() {
        DeskJob<String> job = new DeskJob<>("job", progress -> {
            throw new DeskException(DeskException.Trouble.INPUT, "The folder is missing.");
        }, Runnable::run, taken::add);
        IStatus status = job.run(new NullProgressMonitor());
        assertEquals(IStatus.ERROR, status.getSeverity());
        assertEquals("The folder is missing.", status.getMessage());
        assertEquals(List.of(), taken);
    }

    @Test
    void cancellingStopsTheStepWithoutAComplaint() {
        NullProgressMonitor monitor = new NullProgressMonitor();
        DeskJob<String> job = new DeskJob<>("job", progress -> {
            monitor.setCanceled(true);
            progress.check();
            return "too late";
        }, Runnable::run, taken::add);
        assertEquals(IStatus.CANCEL, job.run(monitor).getSeverity());
        assertEquals(List.of(), taken);
    }
}
