package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.ojalgo.internal.OjalgoSolver;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.solver.MilpSolver;

/** Outside check: brute force, which shares no code with the planner; and each solver is a check of the other. */
class SolversAgreeTest {

    /** 500 fleets, or 10,000 where the system property long.tests is true. */
    private static final int FLEETS = Boolean.getBoolean("long.tests") ? 10_000 : 500;
    private static final int FIRST_SEED = 10_001;

    @Test
    void bothSolversAndBruteForceFindTheSameOptimumOfSmallFleets() throws PlannerException {
        PlainRules rules = new PlainRules();
        int proven = 0;
        for (int seed = FIRST_SEED; seed < FIRST_SEED + FLEETS; seed++) {
            BruteForce.Best best = new BruteForce(request(seed), rules).solve();
            assertEquals(best, plan(new ScipSolver(), seed).best(), "fleet " + seed + " with the native solver");
            Answer java = plan(new OjalgoSolver(), seed);
            assertEquals(best, java.best(), "fleet " + seed + " with the solver in Java");
            proven += java.isProven() ? 1 : 0;
        }
        System.out.printf("%d fleets: brute force and both solvers agree, %d proven by the solver in Java%n",
                FLEETS, proven);
        assertTrue(proven > FLEETS * 99 / 100, proven + " proven by the solver in Java");
    }

    private record Answer(BruteForce.Best best, boolean isProven) {
    }

    private static Answer plan(MilpSolver solver, int seed) throws PlannerException {
        Plan plan = new Planning(new PlainRules(), solver).plan(request(seed), Progress.NONE);
        long moves = plan.machines().stream().mapToLong(machine -> machine.moves().size()).sum();
        return new Answer(new BruteForce.Best(
                plan.optimality().weightOnTarget(), plan.spending().total().minor(), moves),
                plan.optimality().isProven());
    }

    private static PlanRequest request(int seed) {
        return BruteForceTest.fleet(new Random(seed));
    }
}
