package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.insight.QuickAdvice;

/** The curve that is found without a plan for each point, held against the best of all plans with each budget. */
class QuickCurveTest {

    private static final int FLEETS = 40;

    private final Planning planning = new Planning(new PlainRules(), new ScipSolver());

    private BudgetCurve curve(PlanRequest request, int points) throws PlannerException {
        List<BudgetCurve> told = new ArrayList<>();
        BudgetCurve curve = QuickAdvice.curve(planning, request, points, told::add, Progress.NONE);
        assertEquals(curve, told.get(told.size() - 1));
        return curve;
    }

    @Test
    void theBestOfAllPlansLiesBetweenWhatIsFoundAndTheBound() throws PlannerException {
        int points = 0;
        int met = 0;
        int tight = 0;
        for (int seed = 1; seed <= FLEETS; seed++) {
            PlanRequest request = seed % 2 == 0
                    ? BruteForceTest.fleetWithTerms(new Random(seed)) : BruteForceTest.fleet(new Random(seed));
            for (BudgetCurve.Point point : curve(request, 5).points()) {
                PlanRequest asked = request.with(request.policy().withBudget(Optional.of(point.budget())));
                long best = new BruteForce(asked, new PlainRules()).solve().weight();
                Figures told = point.figures();
                String place = "fleet " + seed + " for " + point;
                assertTrue(told.weight() <= best && best <= told.weightBound(), place + ", best " + best);
                assertTrue(told.payable().compareTo(point.budget()) <= 0, place);
                points++;
                met += told.weight() == best ? 1 : 0;
                tight += told.weightBound() == best ? 1 : 0;
            }
        }
        System.out.printf("%d points: %d best plans found, %d bounds met%n", points, met, tight);
        assertTrue(met > points * 3 / 4 && tight > points / 3, points + " points, " + met + " met, " + tight);
    }
}
