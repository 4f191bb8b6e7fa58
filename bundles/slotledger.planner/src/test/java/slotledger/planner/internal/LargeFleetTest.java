package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.insight.QuickAdvice;
import slotledger.rules.standard.StandardRules;

class LargeFleetTest {

    private static final BigDecimal SMALL_GAP = new BigDecimal("0.01");
    private static final Planning PLANNING = new Planning(StandardRules.create(), new ScipSolver());

    @Test
    void sixHundredMachinesGetAProvenPlan() throws PlannerException {
        Plan plan = plan("600 machines", LargeFleets.of(600, 1));
        assertTrue(plan.optimality().isProven());
        assertTrue(plan.work().size() > 200);
    }

    @Test
    void littleMoneyGoesToAsManyMachinesAsPossible() throws PlannerException {
        Fixtures made = LargeFleets.of(300, 2);
        made.budget = Optional.of(Fixtures.eur(100_000));
        Plan plan = plan("300 machines with little money", made);
        assertEquals(plan.optimality().weightBound(), plan.optimality().weightOnTarget());
        assertTrue(plan.machines().stream().flatMap(machine -> machine.obstacle().stream())
                .anyMatch(obstacle -> obstacle.kind() == Obstacle.Kind.BUDGET));
        aCurveFoundByPricesHoldsIt(made, plan.optimality().weightOnTarget());
    }

    private static void aCurveFoundByPricesHoldsIt(Fixtures made, long exact) throws PlannerException {
        long start = System.nanoTime();
        List<Long> times = new ArrayList<>();
        BudgetCurve curve = QuickAdvice.curve(PLANNING, made.request(), 12,
                each -> times.add((System.nanoTime() - start) / 1_000_000), Progress.NONE);
        curve.points().forEach(each -> System.out.println(each.budget() + " " + each.figures()));
        System.out.println(times + " ms");
        Figures told = curve.points().stream().filter(each -> Optional.of(each.budget()).equals(made.budget))
                .findFirst().orElseThrow().figures();
        assertTrue(told.weight() <= exact && exact <= told.weightBound(), exact + " " + told);
        assertTrue(told.weightBound() - told.weight() <= exact / 20, exact + " " + told);
    }

    @Test
    void priceStepsLeaveASmallGapAtMost() throws PlannerException {
        Plan plan = plan("150 machines with price steps", LargeFleets.ofSteps(150, 1));
        assertTrue(plan.optimality().costGap().compareTo(SMALL_GAP) <= 0);
    }

    private static Plan plan(String what, Fixtures made) throws PlannerException {
        long start = System.nanoTime();
        Plan plan = PLANNING.plan(made.request(), Progress.NONE);
        System.out.printf("%s in %.1f s: %d opened, %d not helped, %s, gap %s, weight %d of %d%n",
                what, (System.nanoTime() - start) / 1e9, plan.work().size(), plan.count(Outcome.NOT_HELPED),
                plan.spending().total(), plan.optimality().costGap(), plan.optimality().weightOnTarget(),
                plan.optimality().weightBound());
        return plan;
    }
}
