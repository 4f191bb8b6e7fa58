package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.milp.ScipSolver;
import slotledger.rules.standard.StandardRules;

class LargeFleetTest {

    private static final BigDecimal SMALL_GAP = new BigDecimal("0.002");

    @Test
    void hundredsOfMachinesGetAPlanThatIsProvenOrNearlySo() throws PlannerException {
        long start = System.nanoTime();
        Plan plan = new Planning(StandardRules.create(), new ScipSolver())
                .plan(LargeFleets.of(300, 1).request(), Progress.NONE);
        System.out.printf("300 machines in %.1f s: %d opened, %d not helped, %s, gap %s%n",
                (System.nanoTime() - start) / 1e9, plan.work().size(), plan.count(Outcome.NOT_HELPED),
                plan.spending().total(), plan.optimality().costGap());
        assertEquals(plan.optimality().weightBound(), plan.optimality().weightOnTarget());
        assertTrue(plan.optimality().costGap().compareTo(SMALL_GAP) <= 0);
        assertTrue(plan.work().size() > 100);
    }
}
