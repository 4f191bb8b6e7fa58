package slotledger.workbench.internal.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.junit.jupiter.api.Test;

class JobProgressTest {

    private final List<String> shown = new ArrayList<>();

    private final JobProgress progress = new JobProgress("Planning", new NullProgressMonitor() {
        @Override
        public void beginTask(String name, int totalWork) {
            shown.add(name + " of " + totalWork);
        }

        @Override
        public void subTask(String name) {
            shown.add(name);
        }

        @Override
        public void worked(int work) {
            shown.add("+" + work);
        }
    });

    @Test
    void aStepFillsTheBarAndTheNextOneBeginsAnew() {
        progress.step("reading", 0);
        progress.step("reading", 0.5);
        progress.step("reading", 1.7);
        progress.step("choosing", 0.25);
        assertEquals(List.of("Planning of 1000", "reading", "+500", "+500", "Planning of 1000", "choosing", "+250"),
                shown);
    }

    @Test
    void aStepThatGoesBackDoesNotMoveTheBar() {
        progress.step("reading", 0.5);
        progress.step("reading", 0.25);
        assertEquals(List.of("Planning of 1000", "reading", "+500"), shown);
    }

    @Test
    void workOfUnknownLengthShowsThatSomethingGoesOn() {
        progress.step("waiting", -1);
        assertEquals(List.of("Planning of -1", "waiting"), shown);
    }
}
