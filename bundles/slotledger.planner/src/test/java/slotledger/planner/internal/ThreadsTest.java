package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.rules.standard.StandardRules;

/** A plan doesn't hang on how many threads look for it. */
class ThreadsTest {

    /** Parallel streams keep to the pool of the thread that starts them. */
    private static Plan plan(int threads) throws InterruptedException, ExecutionException {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> new Planning(StandardRules.create(), new ScipSolver())
                    .plan(LargeFleets.of(120, 3).request(), Progress.NONE)).get();
        } finally {
            pool.shutdown();
        }
    }

    /** All a plan says, in its order: two equal maps may stand in different orders, these bytes may not. */
    private static byte[] bytes(Plan plan) {
        return plan.toString().getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void oneThreadAndTwoMakeTheSamePlanByteForByteEachTime() throws InterruptedException, ExecutionException {
        Plan first = plan(1);
        for (int threads : new int[] {1, 2, 2}) {
            Plan again = plan(threads);
            assertEquals(first, again);
            assertArrayEquals(bytes(first), bytes(again));
        }
    }
}
