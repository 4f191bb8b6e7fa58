package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.ojalgo.internal.OjalgoSolver;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;

class SolverFallbackTest {

    private static final PlanRequest REQUEST = BruteForceTest.fleet(new Random(3));

    /** As the native solver is where its product is that of another platform. */
    private static final class Unusable implements MilpSolver {
        @Override
        public String name() {
            return "native";
        }

        @Override
        public Optional<String> hindrance() {
            return Optional.of("There is no native code for this platform.");
        }

        @Override
        public Optional<MilpSolution> minimise(
                IntegerProgramme programme, Linear goal, int mostNodes, Optional<long[]> start, Progress progress) {
            throw new IllegalStateException("A solver with a hindrance must not be asked.");
        }
    }

    private static DefaultFleetPlanner planner(MilpSolver first) {
        return new DefaultFleetPlanner(new PlainRules(), List.of(
                Map.entry(Map.of("service.ranking", 10), new OjalgoSolver()),
                Map.entry(Map.of("service.ranking", 100), first)));
    }

    @Test
    void whereTheNativeSolverCannotRunTheOneInJavaPlansAndTheRemarksSaySo() throws PlannerException {
        Plan plan = planner(new Unusable()).plan(REQUEST, Progress.NONE);
        assertEquals("ojAlgo (Java)", plan.optimality().solver());
        assertTrue(plan.remarks().stream().anyMatch(remark -> remark.code().equals("solver-not-usable")
                && remark.message().contains("There is no native code for this platform.")));
    }

    @Test
    void theBestSolverIsUsedUnlessAnotherIsAskedFor() throws PlannerException {
        DefaultFleetPlanner planner = planner(new ScipSolver());
        assertEquals("SCIP (OR-Tools)", planner.plan(REQUEST, Progress.NONE).optimality().solver());
        assertEquals("ojAlgo (Java)",
                planner.plan(REQUEST.with(Optional.of("OJALGO")), Progress.NONE).optimality().solver());
    }

    @Test
    void anUnknownSolverIsRefusedWithTheNamesThereAre() {
        PlannerException refusal = assertThrows(PlannerException.class, () ->
                planner(new ScipSolver()).plan(REQUEST.with(Optional.of("abacus")), Progress.NONE));
        assertEquals("There is no solver \"abacus\". Known are: SCIP (OR-Tools), ojAlgo (Java).",
                refusal.getMessage());
    }
}
